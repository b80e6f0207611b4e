package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Kind;
import reseat.model.Part;

/** The hazards of parts, and what they speak of. */
final class Hazards {

    private Hazards() {}

    /** Returns the parts that can burn, in order. */
    static List<Part> cells(Device device) {
        return device.parts().values().stream().filter(part -> isCell(device, part)).toList();
    }

    /** Returns whether a part can burn. */
    static boolean isCell(Device device, Part part) {
        return device.kindOf(part).role().equals(Optional.of(Kind.Role.CELL));
    }

    /** Returns the hazards that print with any act on a part, its own and those of its kind. */
    static List<Hazard> of(Device device, Part part) {
        Set<String> ids = new LinkedHashSet<>(part.hazards());
        ids.addAll(device.kindOf(part).hazards());
        List<Hazard> all = new ArrayList<>();
        for (String id : ids) {
            Hazard hazard = device.hazards().get(id);
            if (hazard != null) {
                all.add(hazard);
            }
        }
        return all;
    }

    /** Returns the hazards that print when a part is moved, besides {@link #of}. */
    static List<Hazard> ofMove(Device device, Part part) {
        Set<String> ids = new LinkedHashSet<>();
        part.move()
                .ifPresent(
                        move -> {
                            ids.addAll(move.hazards());
                            ids.addAll(device.manipulation(move.kind()).hazards());
                        });
        List<Hazard> all = new ArrayList<>();
        for (String id : ids) {
            Hazard hazard = device.hazards().get(id);
            if (hazard != null) {
                all.add(hazard);
            }
        }
        return all;
    }

    /** Returns everything that a hazard says. */
    static String text(Hazard hazard) {
        return hazard.nature() + ". " + hazard.consequence() + ". " + hazard.avoidance();
    }

    /** Returns whether a hazard speaks of cells, or of a part by its name. */
    static boolean speaksOfCell(Hazard hazard, Part part) {
        String said = Texts.lower(text(hazard));
        return Texts.CELL.matcher(said).find() || said.contains(Texts.lower(part.name()));
    }
}
