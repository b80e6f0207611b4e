package reseat.simulate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.text.ListText;

/** Warns about the effects of a change of posture on a partly disassembled unit. */
final class Warnings {

    private final BenchState bench;
    private final Words words;

    Warnings(BenchState bench) {
        this.bench = bench;
        this.words = new Words(bench.device());
    }

    /** Returns the notes for turning the unit, as it stands now, to a posture. */
    List<Note> turningTo(String posture) {
        List<Note> notes = new ArrayList<>();
        hanging(posture).ifPresent(notes::add);
        looseScrews(posture).ifPresent(notes::add);
        return notes;
    }

    private Optional<Note> hanging(String posture) {
        List<Joint> tethers = bench.unreleased().stream().filter(bench::isApart).toList();
        if (tethers.isEmpty()) {
            return Optional.empty();
        }
        Set<String> hang = new LinkedHashSet<>();
        for (Joint joint : tethers) {
            joint.holds().stream().filter(part -> !bench.withBase(part)).forEach(hang::add);
        }
        List<String> by = tethers.stream().map(words::joint).toList();
        return Optional.of(
                new Note(
                        Note.Kind.TURNED_WHILE_HANGING,
                        ids(tethers),
                        Words.sentence(
                                words.parts(hang)
                                        + (hang.size() == 1
                                                ? " still hangs by "
                                                : " still hang by ")
                                        + ListText.and(by)
                                        + ": support "
                                        + (hang.size() == 1 ? "it" : "them")
                                        + " while the device is turned "
                                        + Words.posture(posture))));
    }

    /**
     * A released screw is loose in the device as long as all parts that it held are still in place.
     */
    private Optional<Note> looseScrews(String posture) {
        List<Joint> loose =
                bench.device().joints().values().stream()
                        .filter(
                                joint ->
                                        bench.isReleased(joint.id())
                                                && isScrew(joint)
                                                && !bench.isApart(joint))
                        .toList();
        if (loose.isEmpty()) {
            return Optional.empty();
        }
        String what = loose.size() == 1 ? "a released screw" : loose.size() + " released screws";
        return Optional.of(
                new Note(
                        Note.Kind.TURNED_WITH_LOOSE_SCREWS,
                        ids(loose),
                        Words.sentence(
                                what
                                        + " may still stand in the holes of parts that lie in place ("
                                        + ListText.and(loose.stream().map(words::joint).toList())
                                        + "): take "
                                        + (loose.size() == 1 ? "it" : "them")
                                        + " out before the device is turned "
                                        + Words.posture(posture))));
    }

    private boolean isScrew(Joint joint) {
        Kind kind = bench.device().kinds(Kind.Scope.JOINT).get(joint.kind());
        return joint.seat().isPresent()
                || (kind != null && kind.role().equals(Optional.of(Kind.Role.SCREW)));
    }

    private static List<String> ids(List<Joint> joints) {
        return joints.stream().map(Joint::id).toList();
    }
}
