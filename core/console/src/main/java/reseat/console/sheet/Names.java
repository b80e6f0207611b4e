package reseat.console.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.model.Tool;

/** How things of a device are called on a sheet. */
public final class Names {

    private final Device device;

    /** Makes the names of a device. */
    public Names(Device device) {
        this.device = device;
    }

    String part(String id) {
        return device.part(id).name();
    }

    String parts(Collection<String> ids) {
        return and(ids.stream().map(this::part).toList());
    }

    /** Returns the name of a joint; of one without a name, its id as words. */
    public String joint(String id) {
        String name = device.joint(id).name();
        return name.equals(id) ? words(id) : name;
    }

    private static String words(String id) {
        String words = id.replace('-', ' ').replace('_', ' ').replace('.', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    String tool(String id) {
        Tool tool = device.tools().get(id);
        return tool == null ? id : tool.name();
    }

    static String posture(String id) {
        String words = id.replaceFirst("-([0-9]+)$", " at $1°").replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Returns parts by name, in the order given. */
    public String listed(Collection<String> ids) {
        return parts(ids);
    }

    /** Returns a goal in words. */
    public String goal(Goal goal) {
        if (goal instanceof Goal.Free free) {
            return "Free " + parts(free.targets());
        }
        if (goal instanceof Goal.Reach reach) {
            return "Reach " + joint(reach.joint());
        }
        return "Take everything apart";
    }

    /** Returns what one sees of a screw and asks for over the counter. */
    String screw(String id) {
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(id));
        List<String> words = new ArrayList<>();
        words.add(type.thread() + " × " + number(type.lengthMm()) + " mm");
        words.add(type.head());
        words.add(type.drive());
        if (!type.finish().isEmpty()) {
            words.add(type.finish());
        }
        return String.join(", ", words);
    }

    /**
     * Returns several joints in few words: seats of one entry by their seat ids, joints of one name
     * by that name, others by their names.
     */
    String together(List<String> ids) {
        Map<String, List<String>> stems = new LinkedHashMap<>();
        for (String id : ids) {
            Stem stem = stem(id);
            List<String> seats = stems.computeIfAbsent(stem.words, s -> new ArrayList<>());
            if (!stem.seat.isEmpty()) {
                seats.add(stem.seat);
            }
        }
        if (stems.values().stream().allMatch(List::isEmpty)) {
            return and(stems.keySet());
        }
        List<String> words = new ArrayList<>();
        stems.forEach((stem, seats) -> words.add(join(stem, runs(seats))));
        return String.join("; ", words);
    }

    /** Returns joints in few words, with their number where their names do not tell it. */
    String counted(List<String> ids) {
        boolean told =
                ids.size() == 1 || ids.stream().map(this::joint).distinct().count() == ids.size();
        return (told ? "" : ids.size() + " × ") + together(ids);
    }

    /** Shortens seats a b c d to "a to d"; it takes four in a row to be worth it. */
    private static List<String> runs(List<String> seats) {
        List<String> words = new ArrayList<>();
        int from = 0;
        while (from < seats.size()) {
            int to = from;
            while (to + 1 < seats.size() && follows(seats.get(to), seats.get(to + 1))) {
                to++;
            }
            if (to - from >= 3) {
                words.add(seats.get(from) + "\u00a0to\u00a0" + seats.get(to));
            } else {
                words.addAll(seats.subList(from, to + 1));
            }
            from = to + 1;
        }
        return words;
    }

    private static boolean follows(String one, String next) {
        if (one.matches("[0-9]{1,6}") && next.matches("[1-9][0-9]{0,6}")) {
            return Integer.parseInt(next) == Integer.parseInt(one) + 1;
        }
        return one.matches("[a-zA-Z]")
                && next.matches("[a-zA-Z]")
                && next.charAt(0) == one.charAt(0) + 1;
    }

    /** Returns several joints in their order; neighbours of one entry share its words. */
    String inOrder(List<String> ids) {
        List<String> words = new ArrayList<>();
        String stem = "";
        List<String> seats = new ArrayList<>();
        for (String id : ids) {
            Stem next = stem(id);
            if (!next.words.equals(stem) && !stem.isEmpty()) {
                words.add(join(stem, seats));
                seats.clear();
            }
            stem = next.words;
            if (!next.seat.isEmpty()) {
                seats.add(next.seat);
            }
        }
        words.add(join(stem, seats));
        return String.join(", then ", words);
    }

    private static String join(String stem, List<String> seats) {
        return seats.isEmpty() ? stem : stem + " " + String.join(" ", seats);
    }

    private record Stem(String words, String seat) {}

    private Stem stem(String id) {
        String name = device.joint(id).name();
        int dot = id.lastIndexOf('.');
        String seat = dot < 0 ? "" : id.substring(dot + 1);
        if (!seat.isEmpty() && name.endsWith(" " + seat)) {
            return new Stem(name.substring(0, name.length() - seat.length() - 1), seat);
        }
        boolean bare = !seat.isEmpty() && name.equals(id);
        return bare ? new Stem(words(id.substring(0, dot)), seat) : new Stem(joint(id), "");
    }

    /** Returns a torque with its source, or that none is given. */
    static String torque(Seat seat) {
        if (seat.torqueNm().isEmpty()) {
            return "not given";
        }
        return number(seat.torqueNm().getAsDouble())
                + "\u00a0N·m"
                + (seat.torqueSource().isEmpty() ? "" : " (" + seat.torqueSource() + ")");
    }

    /** Returns a time as people say it, in one word as far as lines are broken. */
    public static String time(long ms) {
        if (ms < 60_000) {
            return number(ms / 1000.0) + "\u00a0s";
        }
        long s = Math.round(ms / 1000.0);
        if (s < 3600) {
            return s / 60 + "\u00a0min" + (s % 60 == 0 ? "" : "\u00a0" + s % 60 + "\u00a0s");
        }
        long min = Math.round(s / 60.0);
        return min / 60 + "\u00a0h" + (min % 60 == 0 ? "" : "\u00a0" + min % 60 + "\u00a0min");
    }

    /** Returns how much more or less a time is. */
    public static String difference(long ms) {
        return ms < 0 ? time(-ms) + " less" : time(ms) + " more";
    }

    static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString();
    }

    static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    static String and(Collection<String> words) {
        List<String> all = new ArrayList<>(words);
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1))
                + " and "
                + all.get(all.size() - 1);
    }
}
