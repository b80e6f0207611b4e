package reseat.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
import reseat.plan.SpareNeed;

/** How things of a device are called on a page. */
record Words(Device device) {

    String parts(Collection<String> ids) {
        return String.join(", ", ids.stream().map(id -> device.part(id).name()).toList());
    }

    /** Returns joints by name; seats of one entry share its name. */
    String joints(List<String> ids) {
        Map<String, String> named = new LinkedHashMap<>();
        for (String id : ids) {
            int dot = id.lastIndexOf('.');
            String name = device.joint(id).name();
            if (dot < 0) {
                named.put(name.equals(id) ? plain(id) : name, "");
                continue;
            }
            String seat = id.substring(dot + 1);
            String stem = name.equals(id) ? plain(id.substring(0, dot)) : name;
            if (stem.endsWith(" " + seat)) {
                stem = stem.substring(0, stem.length() - seat.length() - 1);
            }
            named.merge(stem, " " + seat, String::concat);
        }
        return String.join(
                ", ", named.entrySet().stream().map(e -> e.getKey() + e.getValue()).toList());
    }

    private static String plain(String id) {
        String words = id.replace('-', ' ').replace('_', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    String goal(Goal goal) {
        if (goal instanceof Goal.Free free) {
            return "Free " + parts(free.targets());
        }
        return goal instanceof Goal.Reach reach
                ? "Reach " + joints(List.of(reach.joint()))
                : "Take everything apart";
    }

    String tool(String id) {
        Tool tool = device.tools().get(id);
        return tool == null ? id : tool.name();
    }

    static String posture(String id) {
        return plain(id).replaceFirst(" ([0-9]+)$", " at $1\u00b0");
    }

    String screw(String id) {
        ScrewType type = Objects.requireNonNull(device.screwTypes().get(id));
        return type.thread()
                + " \u00d7 "
                + number(type.lengthMm())
                + " mm, "
                + type.head()
                + ", "
                + type.drive()
                + (type.finish().isEmpty() ? "" : ", " + type.finish());
    }

    String consumable(String id) {
        Consumable consumable = device.consumables().get(id);
        return consumable == null ? id : consumable.name();
    }

    String use(ConsumableUse use) {
        return use.quantity().stripTrailingZeros().toPlainString()
                + " "
                + (use.unit().equals("piece") ? "\u00d7" : use.unit())
                + " "
                + consumable(use.consumable());
    }

    String reason(SpareNeed need) {
        return switch (need.reason()) {
            case TARGET -> "if it is replaced";
            case RUINED -> "the work destroys the old one";
            case LOCKING_PATCH -> "a locking patch holds once";
        };
    }

    static String time(long ms) {
        if (ms < 60_000) {
            return number(ms / 1000.0) + " s";
        }
        long s = Math.round(ms / 1000.0);
        return s < 3600
                ? s / 60 + " min " + s % 60 + " s"
                : s / 3600 + " h " + Math.round(s % 3600 / 60.0) + " min";
    }

    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    static String stop(String words) {
        return words.endsWith(".") || words.endsWith(":") ? words : words + ".";
    }
}
