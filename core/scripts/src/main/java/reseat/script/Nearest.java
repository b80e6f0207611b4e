package reseat.script;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import reseat.internal.text.Edits;
import reseat.model.Device;

/** Reports an unknown name with the nearest known ones. */
final class Nearest {

    private static final int LISTED = 12;

    private Nearest() {}

    static List<String> both(Device device) {
        List<String> ids = new ArrayList<>(device.parts().keySet());
        ids.addAll(device.joints().keySet());
        return ids;
    }

    static String unknown(String who, String what, String wanted, Collection<String> known) {
        String sentence = who + " has no " + what + " \"" + wanted + "\"";
        String near = "";
        int best = Math.max(2, wanted.length() / 3) + 1;
        for (String each : known) {
            int away = Edits.between(wanted, each);
            if (away < best) {
                best = away;
                near = each;
            }
        }
        if (!near.isEmpty()) {
            return sentence + "; did you mean \"" + near + "\"?";
        }
        if (known.isEmpty()) {
            return sentence + "; there are none.";
        }
        List<String> some = known.stream().limit(LISTED).toList();
        return sentence
                + ". Known: "
                + String.join(", ", some)
                + (known.size() > LISTED ? " and " + (known.size() - LISTED) + " more." : ".");
    }
}
