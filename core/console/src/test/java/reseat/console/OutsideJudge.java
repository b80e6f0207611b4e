package reseat.console;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What an outside program does with a plan and the resolved facts, from core/docs/plan-json.md and
 * core/docs/resolved.md alone.
 */
@SuppressWarnings("unchecked")
final class OutsideJudge {

    private final Map<String, Object> facts;
    private final Map<String, Map<String, Object>> parts;
    private final Map<String, Map<String, Object>> joints;
    private final String base;
    private final Set<String> released = new HashSet<>();
    private final Map<String, Integer> place = new HashMap<>();
    private int places = 1;
    private String tool;
    private String posture;
    private long total;

    private OutsideJudge(Map<String, Object> facts) {
        this.facts = facts;
        parts = (Map<String, Map<String, Object>>) facts.get("parts");
        joints = (Map<String, Map<String, Object>>) facts.get("joints");
        base = text(facts, "base");
        tool = text(facts, "hand");
        posture = text(facts, "usualPosture");
        parts.keySet().forEach(part -> place.put(part, 0));
    }

    /** Carries out the plan; fails where it does not hold or does not add up. */
    static void judge(String factsJson, String planJson) {
        OutsideJudge judge = new OutsideJudge(PlainJson.object(factsJson));
        Map<String, Object> plan = PlainJson.object(planJson);
        Map<String, Object> start = (Map<String, Object>) plan.get("start");
        judge.released.addAll(texts(start, "released"));
        for (Object apart : (List<Object>) start.get("places")) {
            int own = judge.places++;
            ((List<String>) apart).forEach(part -> judge.place.put(part, own));
        }
        for (Object act : (List<Object>) plan.get("acts")) {
            judge.act((Map<String, Object>) act);
        }
        judge.goal((Map<String, Object>) plan.get("goal"));
        require(judge.total == number(plan, "totalMs"), "total is " + judge.total);
        require(number(plan, "lowerBoundMs") <= judge.total, "bound above the total");
        require(
                (Boolean) plan.get("proved") == (number(plan, "lowerBoundMs") == judge.total),
                "proved");
    }

    private void act(Map<String, Object> act) {
        String id = text(act, "id");
        switch (text(act, "kind")) {
            case "prepare" -> {
                Map<String, Object> fact = in(in(facts, "prepare"), text(act, "prepare"));
                same(act, number(fact, "ms"), number(fact, "restoreMs"), tool, posture, id);
            }
            case "release" -> release(act, id);
            case "move" -> move(act, id);
            default -> throw new AssertionError("unknown kind of " + id);
        }
    }

    private void release(Map<String, Object> act, String id) {
        String joint = text(act, "joint");
        require(reachable(joint), id + " is hidden or live");
        require(relaxed(joint, text(act, "way")), id + " is strained");
        require(!onlyLetsGo(joint), id + " lets go only with a move");
        boolean again = released.contains(joint);
        require(!again, id + " is released already");
        Map<String, Object> way = in(in(joints.get(joint), "ways"), text(act, "way"));
        same(
                act,
                number(way, "ms"),
                number(way, "restoreMs"),
                text(way, "tool"),
                text(way, "posture"),
                id);
        released.add(joint);
    }

    private boolean relaxed(String joint, String way) {
        Map<String, Object> strains = maybe(in(in(facts, "computed"), "strainedBy"), joint);
        return released.containsAll(texts(strains, way));
    }

    private boolean onlyLetsGo(String joint) {
        Map<String, Object> fact = joints.get(joint);
        Map<String, Object> kind = in(in(in(facts, "kinds"), "joints"), text(fact, "kind"));
        return Boolean.TRUE.equals(fact.get("gives")) && text(kind, "role").equals("connector");
    }

    private boolean cut(String supply) {
        return released.stream().anyMatch(r -> texts(joints.get(r), "cuts").contains(supply));
    }

    private boolean cutFor(String joint) {
        Map<String, Object> all = in(in(in(facts, "computed"), "needs"), "joints");
        return ((List<Map<String, Object>>) all.getOrDefault(joint, List.of()))
                .stream().allMatch(need -> cut(text(need, "supply")));
    }

    private boolean cutFor(Set<String> set) {
        Set<String> needs = new HashSet<>();
        boolean silent = false;
        for (String part : set) {
            needs.addAll(texts(parts.get(part), "needs"));
            silent |= !parts.get(part).containsKey("needs");
        }
        Map<String, Object> power = in(in(facts, "computed"), "power");
        boolean inside = !texts(in(power, "outside"), "parts").containsAll(set);
        for (String supply : silent ? in(facts, "supplies").keySet() : Set.<String>of()) {
            boolean ruled =
                    (inside && isFirst(power, supply, set))
                            || set.contains(text(in(in(facts, "supplies"), supply), "of"));
            List<String> onTheWay = texts(in(in(power, "onTheWay"), supply), "parts");
            if (ruled
                    && !in(power, "dropped").containsKey(supply)
                    && set.stream().noneMatch(onTheWay::contains)) {
                needs.add(supply);
            }
        }
        return needs.stream().allMatch(this::cut);
    }

    /** Whether a supply is cut first, and none of the parts is on the way to an earlier one. */
    private static boolean isFirst(Map<String, Object> power, String supply, Set<String> set) {
        List<String> first = texts(power, "first");
        int rank = first.indexOf(supply);
        return rank >= 0
                && first.subList(0, rank).stream()
                        .filter(earlier -> !in(power, "dropped").containsKey(earlier))
                        .map(earlier -> texts(in(in(power, "onTheWay"), earlier), "parts"))
                        .noneMatch(way -> set.stream().anyMatch(way::contains));
    }

    private boolean reachable(String joint) {
        Map<String, Object> fact = joints.get(joint);
        List<String> holds = texts(fact, "holds");
        int site = place.get(holds.get(holds.size() - 1));
        return texts(fact, "under").stream().noneMatch(part -> place.get(part) == site)
                && cutFor(joint);
    }

    private void move(Map<String, Object> act, String id) {
        Set<String> set = new HashSet<>(texts(act, "parts"));
        require(!set.isEmpty() && !set.contains(base), id + " moves the base or nothing");
        Set<String> reached = new HashSet<>(List.of(set.iterator().next()));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (String joint : joints.keySet()) {
                List<String> holds = texts(joints.get(joint), "holds");
                if (!released.contains(joint) && holds.stream().anyMatch(reached::contains)) {
                    for (String part : holds) {
                        grown |= set.contains(part) && reached.add(part);
                    }
                }
            }
        }
        require(reached.equals(set), id + " does not hang together");
        require(cutFor(set), id + " is live");
        long more = 0;
        long moreBack = 0;
        boolean tied = false;
        Set<String> gaveWay = new HashSet<>();
        for (String joint : joints.keySet()) {
            Map<String, Object> fact = joints.get(joint);
            List<String> holds = texts(fact, "holds");
            boolean leads = holds.stream().anyMatch(set::contains) && !set.containsAll(holds);
            if (released.contains(joint) || !leads) {
                continue;
            }
            if (Boolean.TRUE.equals(fact.get("gives"))) {
                require(cutFor(joint), id + ": " + joint + " is live");
                Map<String, Object> ways = in(fact, "ways");
                Map<String, Object> way = in(ways, ways.keySet().iterator().next());
                more += number(way, "ms");
                moreBack += number(way, "restoreMs");
                gaveWay.add(joint);
            } else {
                require(Boolean.TRUE.equals(fact.get("slack")), id + " is held by " + joint);
                tied = true;
            }
        }
        long ms = 0;
        long restoreMs = 0;
        for (String part : set) {
            for (String over : texts(parts.get(part), "under")) {
                boolean inTheWay = !set.contains(over) && place.get(over).equals(place.get(part));
                require(!inTheWay, id + ": " + over + " is in the way of " + part);
            }
            Map<String, Object> move = in(parts.get(part), "move");
            ms = Math.max(ms, number(move, "ms"));
            restoreMs = Math.max(restoreMs, number(move, "restoreMs"));
            require(text(move, "tool").equals(text(act, "tool")), id + ": tool of " + part);
            require(text(move, "posture").equals(text(act, "posture")), id + ": posture");
        }
        more += tied ? number(in(facts, "setup"), "layAside") : 0;
        same(act, ms + more, restoreMs + moreBack, text(act, "tool"), text(act, "posture"), id);
        released.addAll(gaveWay);
        int own = places++;
        set.forEach(part -> place.put(part, own));
    }

    private void same(
            Map<String, Object> act, long ms, long back, String with, String lying, String id) {
        require(number(act, "ms") == ms, id + ": ms");
        require(number(act, "restoreMs") == back, id + ": restoreMs");
        require(text(act, "tool").equals(with), id + ": tool");
        require(text(act, "posture").equals(lying), id + ": posture");
        Map<String, Object> setup = in(facts, "setup");
        long change = change(in(setup, "tool"), tool, with);
        change += change(in(setup, "posture"), posture, lying);
        change += !lying.equals(posture) && laidAside() ? number(setup, "turnOpen") : 0;
        require(number(act, "setupMs") == change, id + ": setupMs is not " + change);
        tool = with;
        posture = lying;
        total += ms + back + change;
    }

    /** Whether the parts of a joint that is not released lie apart. */
    private boolean laidAside() {
        return joints.keySet().stream()
                .filter(joint -> !released.contains(joint))
                .map(joint -> texts(joints.get(joint), "holds"))
                .anyMatch(holds -> holds.stream().map(place::get).distinct().count() > 1);
    }

    private static long change(Map<String, Object> table, String from, String to) {
        return from.equals(to) ? 0 : number(in(table, from), to);
    }

    private void goal(Map<String, Object> goal) {
        switch (text(goal, "kind")) {
            case "reach" -> {
                String joint = text(goal, "joint");
                boolean some =
                        in(joints.get(joint), "ways").keySet().stream()
                                .anyMatch(way -> relaxed(joint, way));
                require(reachable(joint) && some, "goal not reached");
            }
            case "teardown" -> {
                require(released.equals(joints.keySet()), "not all released");
                require(new HashSet<>(place.values()).size() == parts.size(), "not all alone");
            }
            default -> texts(goal, "parts").forEach(this::free);
        }
    }

    private void free(String target) {
        List<String> unit = new ArrayList<>(texts(parts.get(target), "spareIncludes"));
        unit.add(target);
        for (String joint : joints.keySet()) {
            List<String> holds = texts(joints.get(joint), "holds");
            boolean out = holds.contains(target) && !unit.containsAll(holds);
            require(!out || released.contains(joint), target + " still hangs by " + joint);
        }
        for (String part : parts.keySet()) {
            boolean shares = place.get(part).equals(place.get(target));
            require(!shares || unit.contains(part), target + " lies with " + part);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }

    private static Map<String, Object> in(Map<String, Object> map, String key) {
        Object value = map.get(key);
        require(value != null, "no " + key);
        return (Map<String, Object>) value;
    }

    private static Map<String, Object> maybe(Map<String, Object> map, String key) {
        return (Map<String, Object>) map.getOrDefault(key, Map.of());
    }

    private static String text(Map<String, Object> map, String key) {
        return String.valueOf(map.get(key));
    }

    private static long number(Map<String, Object> map, String key) {
        require(map.get(key) instanceof Double, "no number " + key);
        return ((Double) map.get(key)).longValue();
    }

    private static List<String> texts(Map<String, Object> map, String key) {
        return (List<String>) map.getOrDefault(key, List.of());
    }
}
