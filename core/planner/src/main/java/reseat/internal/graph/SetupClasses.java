package reseat.internal.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.model.Device;

/** Numbers the pairs of tool and posture that acts need, in the order of their first use. */
final class SetupClasses {

    private final Device device;
    private final Map<String, Integer> index = new LinkedHashMap<>();
    private final List<String> tools = new ArrayList<>();
    private final List<String> postures = new ArrayList<>();

    SetupClasses(Device device) {
        this.device = device;
    }

    /** Returns the number of a pair; a new one gets the next number. */
    int of(String tool, String posture) {
        return index.computeIfAbsent(
                tool + "\n" + posture,
                key -> {
                    tools.add(tool);
                    postures.add(posture);
                    return tools.size() - 1;
                });
    }

    int size() {
        return tools.size();
    }

    String[] tools() {
        return tools.toArray(String[]::new);
    }

    String[] postures() {
        return postures.toArray(String[]::new);
    }

    /** Returns what a change from one class to another costs, in milliseconds. */
    long[][] changes() {
        long[][] ms = new long[size()][size()];
        for (int from = 0; from < size(); from++) {
            for (int to = 0; to < size(); to++) {
                ms[from][to] =
                        device.setup()
                                .setupMs(
                                        tools.get(from),
                                        postures.get(from),
                                        tools.get(to),
                                        postures.get(to));
            }
        }
        return ms;
    }
}
