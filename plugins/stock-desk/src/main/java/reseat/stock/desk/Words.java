package reseat.stock.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import reseat.model.Device;
import reseat.model.Goal;

/** Goals and times in words. */
final class Words {

    private Words() {}

    static String goal(Device device, Goal goal) {
        if (goal instanceof Goal.Free free) {
            return "Free "
                    + and(free.targets().stream().map(id -> device.part(id).name()).toList());
        }
        if (goal instanceof Goal.Reach reach) {
            return "Reach " + joint(device, reach.joint());
        }
        return "Take everything apart";
    }

    private static String joint(Device device, String id) {
        String name = device.joint(id).name();
        if (!name.equals(id)) {
            return name;
        }
        String words = id.replace('-', ' ').replace('_', ' ').replace('.', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String time(long ms) {
        if (ms < 60_000) {
            BigDecimal seconds = BigDecimal.valueOf(ms / 1000.0).setScale(3, RoundingMode.HALF_UP);
            return seconds.stripTrailingZeros().toPlainString() + "\u00a0s";
        }
        long s = Math.round(ms / 1000.0);
        if (s < 3600) {
            return s / 60 + "\u00a0min" + (s % 60 == 0 ? "" : "\u00a0" + s % 60 + "\u00a0s");
        }
        long min = Math.round(s / 60.0);
        return min / 60 + "\u00a0h" + (min % 60 == 0 ? "" : "\u00a0" + min % 60 + "\u00a0min");
    }

    private static String and(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1))
                + " and "
                + words.get(words.size() - 1);
    }
}
