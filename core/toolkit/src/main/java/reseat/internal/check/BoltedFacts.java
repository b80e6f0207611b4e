package reseat.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.check.Severity;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.ScrewType;
import reseat.model.Seat;

/**
 * What the checks of screws share: the tables, and where facts stand.
 *
 * @param tables the tables
 */
public record BoltedFacts(FastenerTables tables) {

    /** A screw in its seat. */
    record Screwed(Joint joint, Seat seat, ScrewType type) {
        String pointer() {
            return "/joints/" + joint.id();
        }
    }

    /** Returns the screws in view, in order. */
    List<Screwed> screws(CheckInput input) {
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

    /** Returns a finding about a joint. */
    static Finding finding(
            CheckInfo info,
            Severity severity,
            Device device,
            String joint,
            String field,
            String message,
            List<String> evidence,
            String remedy) {
        return new Finding(
                info.id(),
                severity,
                origin(device, joint, field),
                "/joints/" + joint,
                info.title(),
                message,
                // facts in a row, not sentences: whoever joins them gets no doubled stops
                evidence.stream().map(fact -> fact.replaceFirst("\\.$", "")).toList(),
                remedy);
    }
}
