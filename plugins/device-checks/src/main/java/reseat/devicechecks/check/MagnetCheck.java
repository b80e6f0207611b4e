package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Device;
import reseat.model.Part;
import reseat.model.Severity;

/** Finds magnets that no caution speaks of. */
final class MagnetCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "magnet-without-caution",
                    "Magnet without a caution",
                    "A part that is magnetic, or has a magnet by its name, and no hazard that speaks of it; or that is not marked as magnetic.",
                    "A magnet draws screws into the device, wipes cards and disturbs pacemakers. Common practice, no source.",
                    Severity.WARNING,
                    List.of("hazards", "safety", "screws"),
                    List.of());

    /** What holds a magnet, at the end of a name. */
    private static final Pattern HAS_MAGNET =
            Pattern.compile(
                    "(?:^|\\s)(?:loud)?(?:speakers?|magnets?|vibration motors?|motors?|buzzers?|solenoids?)$");

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        Device device = input.device();
        List<Finding> found = new ArrayList<>();
        for (Part part : device.parts().values()) {
            boolean marked =
                    device.kindOf(part).magnetic()
                            || part.move()
                                    .filter(move -> device.manipulation(move.kind()).magnetic())
                                    .isPresent();
            boolean byName =
                    HAS_MAGNET.matcher(Texts.lower(part.name()).replace('-', ' ')).find()
                            || HAS_MAGNET.matcher(Texts.lower(device.kindOf(part).title())).find();
            boolean warned =
                    Stream.concat(
                                    Hazards.of(device, part).stream(),
                                    Hazards.ofMove(device, part).stream())
                            .anyMatch(
                                    hazard ->
                                            Texts.MAGNET
                                                    .matcher(Texts.lower(Hazards.text(hazard)))
                                                    .find());
            if ((marked || byName) && !warned) {
                found.add(
                        input.finding("/parts/" + part.id())
                                .evidence("kind " + part.kind())
                                .says(
                                        part.id() + " has a magnet, and no hazard speaks of it.",
                                        "Give the part or its kind a hazard such as magnet."));
            } else if (byName && !marked) {
                found.add(
                        input.finding("/parts/" + part.id())
                                .evidence("kind " + part.kind())
                                .says(
                                        part.id()
                                                + " has a magnet by its name, and neither its kind nor its move is marked as magnetic.",
                                        "Give it a kind with magnetic: true."));
            }
        }
        return found;
    }
}
