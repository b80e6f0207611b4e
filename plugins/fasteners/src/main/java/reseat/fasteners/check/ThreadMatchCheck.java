package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.Material;
import reseat.fasten.ScrewThread;
import reseat.model.Seat;
import reseat.model.Severity;
import reseat.text.NumberText;

/** Finds seats whose thread is not that of their screw. */
final class ThreadMatchCheck extends JointCheck {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "seat-thread-differs",
                    "Thread of seat and screw differ",
                    "A seat with another diameter, pitch or profile than its screw; a thread-forming screw in a seat that has a thread already; a machine screw that would have to form its thread in plastic.",
                    "The screw strips the seat, jams in it or falls through. Diameters, pitches and profiles are those of ISO 261 and ISO 1501; what forms a thread where is common practice, no source.",
                    Severity.ERROR,
                    List.of("screws"),
                    List.of());

    ThreadMatchCheck() {
        super(INFO);
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (BoltedFacts.Screwed screw : BoltedFacts.screws(input)) {
            thread(input, screw.type().thread()).ifPresent(own -> look(input, screw, own, found));
        }
        return found;
    }

    private static Optional<ScrewThread> thread(CheckInput input, String name) {
        return BoltedFacts.known(() -> input.tables().thread(name));
    }

    private void look(
            CheckInput input, BoltedFacts.Screwed screw, ScrewThread own, List<Finding> found) {
        Optional<ScrewThread> seat = screw.seat().thread().flatMap(name -> thread(input, name));
        boolean forming = own.series() == ScrewThread.Series.FORMING;
        String type = screw.type().id();
        String joint = screw.joint().id();
        if (seat.isPresent() && !same(own, seat.get())) {
            found.add(
                    finding(
                            input,
                            joint,
                            "thread",
                            "The seat of "
                                    + joint
                                    + " has the thread "
                                    + told(seat.get())
                                    + ", and its screw "
                                    + type
                                    + " has "
                                    + told(own)
                                    + ".",
                            List.of(),
                            "Measure both, and correct the wrong one."));
        } else if (forming && screw.seat().form() != Seat.Form.FORMED) {
            found.add(
                    finding(
                            input,
                            joint,
                            "form",
                            "Screw "
                                    + type
                                    + " of "
                                    + joint
                                    + " forms its own thread, but its seat has a thread already.",
                            List.of("thread " + own.designation()),
                            "State form: formed, or another screw."));
        } else if (!forming && screw.seat().form() == Seat.Form.FORMED && plastic(input, screw)) {
            found.add(
                    finding(
                            input,
                            Severity.WARNING,
                            joint,
                            "form",
                            "Screw "
                                    + type
                                    + " of "
                                    + joint
                                    + " has a machine thread, and its seat is a plain hole in plastic.",
                            List.of("thread " + own.designation()),
                            "State the thread-forming screw, or the insert that is there."));
        }
    }

    static boolean plastic(CheckInput input, BoltedFacts.Screwed screw) {
        return screw.seat()
                .material()
                .flatMap(name -> BoltedFacts.known(() -> input.tables().material(name)))
                .filter(Material::thermoplastic)
                .isPresent();
    }

    private static boolean same(ScrewThread one, ScrewThread other) {
        return Math.abs(one.diameterMm() - other.diameterMm()) < 1e-9
                && Math.abs(one.pitchMm() - other.pitchMm()) < 1e-9
                && one.series().metricProfile() == other.series().metricProfile();
    }

    private static String told(ScrewThread thread) {
        return thread.designation() + " (pitch " + NumberText.mm(thread.pitchMm()) + ")";
    }
}
