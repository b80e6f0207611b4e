package reseat.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;

/**
 * Screws out and screws in, by type and seat. A screw that stays in its part when it is loosened is
 * not counted.
 *
 * @param entries one for each screw that comes out or goes in, in the order of teardown and rebuild
 * @param totals one for each type of screw, in the order in which they come out first
 */
public record Tally(List<Entry> entries, List<Total> totals) {

    public Tally {
        entries = List.copyOf(entries);
        totals = List.copyOf(totals);
    }

    /** Which way a screw goes. */
    public enum Side {
        /** Out of its seat, in the teardown. */
        OUT,
        /** Into its seat, in the rebuild. */
        IN
    }

    /**
     * One screw that comes out or goes in.
     *
     * @param side which way it goes
     * @param act place of the act in the teardown or in the rebuild, counted from 0; {@link
     *     #BEFORE} if the screw was out when the unit arrived and the rebuild puts it in
     * @param joint id of the joint
     * @param type id of the screw type
     * @param outOfType how many of its type are out afterwards
     * @param outInAll how many screws are out afterwards
     */
    public record Entry(
            Side side, int act, String joint, String type, int outOfType, int outInAll) {

        /** The act of a screw that was out when the unit arrived. */
        public static final int BEFORE = -1;
    }

    /**
     * The totals of one type.
     *
     * @param type id of the screw type
     * @param out ids of the joints that its screws came out of, in order
     * @param in ids of the joints that its screws went into, in order
     */
    public record Total(String type, List<String> out, List<String> in) {
        public Total {
            out = List.copyOf(out);
            in = List.copyOf(in);
        }

        /** Returns whether each seat that a screw came out of received one of its type again. */
        public boolean closes() {
            return out.stream().sorted().toList().equals(in.stream().sorted().toList());
        }
    }

    /** Counts a plan and its rebuild. */
    public static Tally of(Plan plan, Rebuild rebuild) {
        return of(plan.request().device(), plan.acts(), rebuild);
    }

    /**
     * Counts a teardown and its rebuild.
     *
     * @param teardown the acts of the teardown
     */
    public static Tally of(Device device, List<CostedAct> teardown, Rebuild rebuild) {
        Counter counter = new Counter(device);
        for (RebuildAct act : rebuild.acts()) {
            if (act.kind() == RebuildAct.Kind.MAKE && act.undoes().isEmpty()) {
                counter.count(Side.OUT, Entry.BEFORE, act.act().orElseThrow());
            }
        }
        for (int i = 0; i < teardown.size(); i++) {
            counter.count(Side.OUT, i, teardown.get(i).act());
        }
        for (int i = 0; i < rebuild.acts().size(); i++) {
            RebuildAct act = rebuild.acts().get(i);
            if (act.kind() == RebuildAct.Kind.MAKE) {
                counter.count(Side.IN, i, act.act().orElseThrow());
            }
        }
        return counter.tally();
    }

    /** Returns whether each seat that a screw came out of received one of the same type again. */
    public boolean closes() {
        return totals.stream().allMatch(Total::closes);
    }

    /** Returns how many screws come out. */
    public int screwsOut() {
        return totals.stream().mapToInt(total -> total.out().size()).sum();
    }

    /** Returns how many screws are out when everything is done. */
    public int left() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).outInAll();
    }

    private static final class Counter {
        private final Device device;
        private final List<Entry> entries = new ArrayList<>();
        private final Map<String, List<String>> out = new LinkedHashMap<>();
        private final Map<String, List<String>> in = new LinkedHashMap<>();
        private int all;

        Counter(Device device) {
            this.device = device;
        }

        void count(Side side, int at, Act act) {
            if (!(act instanceof Act.Release release)) {
                return;
            }
            Joint joint = device.joint(release.joint());
            if (joint.seat().isEmpty() || staysInItsPart(joint, release.way())) {
                return;
            }
            String type = joint.seat().get().screw();
            (side == Side.OUT ? out : in)
                    .computeIfAbsent(type, t -> new ArrayList<>())
                    .add(joint.id());
            all += side == Side.OUT ? 1 : -1;
            entries.add(new Entry(side, at, joint.id(), type, outOf(type), all));
        }

        private boolean staysInItsPart(Joint joint, String wayId) {
            String way = Objects.requireNonNull(joint.ways().get(wayId)).kind();
            return device.kindOf(joint).captive() || device.manipulation(way).captive();
        }

        private int outOf(String type) {
            return out.getOrDefault(type, List.of()).size()
                    - in.getOrDefault(type, List.of()).size();
        }

        Tally tally() {
            Map<String, Total> totals = new LinkedHashMap<>();
            for (Map<String, List<String>> side : List.of(out, in)) {
                for (String type : side.keySet()) {
                    totals.computeIfAbsent(
                            type,
                            t ->
                                    new Total(
                                            t,
                                            out.getOrDefault(t, List.of()),
                                            in.getOrDefault(t, List.of())));
                }
            }
            return new Tally(entries, List.copyOf(totals.values()));
        }
    }
}
