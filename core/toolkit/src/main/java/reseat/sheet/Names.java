package reseat.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.ScrewType;
import reseat.model.Tool;
import reseat.text.ListText;
import reseat.text.NumberText;

/**
 * The names of a device's parts, joints and tools wherever people read them: on sheets, in command
 * output, in drawings. All ids must be ids of the device.
 */
public final class Names {

    private final Device device;

    /** Creates the names of a device. */
    public Names(Device device) {
        this.device = device;
    }

    /** Returns the name of a part. */
    public String part(String id) {
        return device.part(id).name();
    }

    /** Returns parts by name, in the order given: {@code A, B and C}. */
    public String parts(Collection<String> ids) {
        return ListText.and(ids.stream().map(this::part).toList());
    }

    /** Returns the name of a joint; if it has none, its id as words. */
    public String joint(String id) {
        String name = device.joint(id).name();
        return name.equals(id) ? words(id) : name;
    }

    private static String words(String id) {
        String words = id.replace('-', ' ').replace('_', ' ').replace('.', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Returns the name of a tool, or its id if the device does not define it. */
    public String tool(String id) {
        Tool tool = device.tools().get(id);
        return tool == null ? id : tool.name();
    }

    /** Returns a posture in words: {@code Lid at 90°} for {@code lid-90}. */
    public static String posture(String id) {
        String words = id.replaceFirst("-([0-9]+)$", " at $1°").replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
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

    /** Returns what people see of a screw type and use to order it: thread, length, head, drive. */
    public String screw(String id) {
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(id));
        List<String> words = new ArrayList<>();
        words.add(type.thread() + " × " + NumberText.of(type.lengthMm()) + " mm");
        words.add(type.head());
        words.add(type.drive());
        if (!type.finish().isEmpty()) {
            words.add(type.finish());
        }
        return String.join(", ", words);
    }

    /** Returns a quantity of a consumable: {@code 30 mm Polyimide tape}. */
    public String use(ConsumableUse use) {
        Consumable consumable = device.consumables().get(use.consumable());
        return NumberText.of(use.quantity())
                + " "
                + (use.unit().equals("piece") ? "×" : use.unit())
                + " "
                + (consumable == null ? use.consumable() : consumable.name());
    }

    /**
     * Returns several joints in few words: seats of one entry by their seat ids, joints of one name
     * by that name, others by their names.
     */
    public String together(List<String> ids) {
        Map<String, List<String>> stems = new LinkedHashMap<>();
        for (String id : ids) {
            Stem stem = stem(id);
            List<String> seats = stems.computeIfAbsent(stem.words, s -> new ArrayList<>());
            if (!stem.seat.isEmpty()) {
                seats.add(stem.seat);
            }
        }
        if (stems.values().stream().allMatch(List::isEmpty)) {
            return ListText.and(stems.keySet());
        }
        List<String> words = new ArrayList<>();
        stems.forEach((stem, seats) -> words.add(join(stem, runs(seats))));
        return String.join("; ", words);
    }

    /** Returns joints in few words, with their number if the names do not show it. */
    public String counted(List<String> ids) {
        boolean told =
                ids.size() == 1 || ids.stream().map(this::joint).distinct().count() == ids.size();
        return (told ? "" : ids.size() + " × ") + together(ids);
    }

    /** Shortens seats a b c d to "a to d"; only for four or more in a row. */
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

    /** Returns several joints in their order; consecutive joints of one entry share its name. */
    public String inOrder(List<String> ids) {
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
}
