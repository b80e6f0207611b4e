package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import reseat.check.CheckInput;
import reseat.fasten.FastenerInputException;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.ScrewType;
import reseat.model.Seat;

/** What the checks of screws share: which screws are in view, and where facts stand. */
final class BoltedFacts {

    private BoltedFacts() {}

    /** A screw in its seat. */
    record Screwed(Joint joint, Seat seat, ScrewType type) {
        String pointer() {
            return "/joints/" + joint.id();
        }
    }

    /** Returns the screws in view, in order. */
    static List<Screwed> screws(CheckInput input) {
        List<Screwed> all = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            joint.seat()
                    .ifPresent(
                            seat ->
                                    all.add(
                                            new Screwed(
                                                    joint,
                                                    seat,
                                                    Objects.requireNonNull(
                                                            input.device()
                                                                    .screwTypes()
                                                                    .get(seat.screw())))));
        }
        return all;
    }

    /**
     * Returns what a computation gives, or empty where a name in the device is not known, which
     * another check tells.
     */
    static <T> Optional<T> known(Supplier<T> computation) {
        try {
            return Optional.of(computation.get());
        } catch (FastenerInputException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns where a fact of a joint stands. A joint written with {@code seats} stands under the
     * id before its last dot, or dots.
     */
    static Origin origin(Device device, String joint, String field) {
        List<String> tries = new ArrayList<>();
        tries.add("/joints/" + joint + "/seat/" + field);
        tries.add("/joints/" + joint + "/" + field);
        tries.add("/joints/" + joint);
        for (int dot = joint.lastIndexOf('.'); dot > 0; dot = joint.lastIndexOf('.', dot - 1)) {
            String group = "/joints/" + joint.substring(0, dot);
            String seat = joint.substring(dot + 1);
            tries.add(group + "/seats/" + seat + "/" + field);
            tries.add(group + "/seats/" + seat);
            tries.add(group + "/seat/" + field);
            tries.add(group);
        }
        for (String pointer : tries) {
            Origin origin = device.origins().get(pointer);
            if (origin != null) {
                return origin;
            }
        }
        return device.origin("/joints/" + joint);
    }
}
