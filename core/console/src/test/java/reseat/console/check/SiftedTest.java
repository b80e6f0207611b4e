package reseat.console.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import reseat.check.Check;
import reseat.files.CheckSource;
import reseat.files.KnownFinding;
import reseat.model.Device;
import reseat.model.Origin;

class SiftedTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Device DEVICE = Toys.device("x", "y");

    private final CheckReport report = run(Toys.source("d.yaml", DEVICE));

    @Test
    void anEntryHidesTheFindingItStandsFor() {
        KnownFinding entry = entry("good", "bench", "/joints/x", TODAY);
        Sifted sifted = Sifted.of(report, List.of(entry), TODAY);

        assertEquals(List.of("/joints/y"), subjects(sifted.open()));
        assertEquals(List.of("/joints/x"), subjects(List.copyOf(sifted.accepted().keySet())));
        assertEquals(List.of(), sifted.idle());
        assertEquals(List.of(), sifted.expired());
    }

    @Test
    void itsLastDayIsTheLastOnWhichItDoes() {
        KnownFinding entry = entry("good", "bench", "/joints/x", TODAY);
        Sifted sifted = Sifted.of(report, List.of(entry), TODAY.plusDays(1));

        assertEquals(List.of("/joints/x", "/joints/y"), subjects(sifted.open()));
        assertEquals(List.of(entry), sifted.expired());
    }

    @Test
    void anExpiredEntryThatWasRenewedIsNotTold() {
        KnownFinding old = entry("good", "bench", "/joints/x", TODAY.minusDays(1));
        KnownFinding renewed = entry("good", "bench", "/joints/x", TODAY.plusDays(9));
        Sifted sifted = Sifted.of(report, List.of(old, renewed), TODAY);

        assertEquals(List.of(), sifted.expired());
        assertEquals(List.of("/joints/y"), subjects(sifted.open()));
    }

    @Test
    void anEntryThatStandsForNothingIsIdle() {
        KnownFinding entry = entry("good", "bench", "/joints/z", TODAY);

        assertEquals(List.of(entry), Sifted.of(report, List.of(entry), TODAY).idle());
    }

    @Test
    void ofWhatWasNotLookedAtNothingIsSaid() {
        KnownFinding device = entry("good", "other", "/joints/x", TODAY);
        KnownFinding check = entry("elsewhere", "bench", "/joints/x", TODAY);
        Sifted sifted = Sifted.of(report, List.of(device, check), TODAY);

        assertEquals(List.of(device, check), sifted.unseen());
        assertEquals(List.of(), sifted.idle());
    }

    @Test
    void ofACheckThatFailedNothingIsSaidEither() {
        Check bad =
                Toys.check(
                        Toys.info("bad"),
                        input -> {
                            throw new IllegalStateException("always");
                        });
        CheckReport failed =
                new CheckRunner(List.of(bad), 1, CheckWatch.NONE)
                        .run(List.of(Toys.source("d.yaml", DEVICE)));
        KnownFinding entry = entry("bad", "bench", "/joints/x", TODAY);

        assertEquals(List.of(entry), Sifted.of(failed, List.of(entry), TODAY).unseen());
    }

    @Test
    void standsForAllVariants() {
        CheckReport both =
                run(Toys.source("d.yaml", Toys.device("x"), Toys.variant("lte", "x", "y")));
        KnownFinding entry = entry("good", "bench", "/joints/x", TODAY);

        assertEquals(List.of("/joints/y"), subjects(Sifted.of(both, List.of(entry), TODAY).open()));
    }

    @Test
    void acceptingMakesOneEntryForEachOpenSubject() {
        Check chatty =
                Toys.check(
                        Toys.info("chatty"),
                        input ->
                                List.of(
                                        input.finding("/joints/x").says("One.", "Do."),
                                        input.finding("/joints/x").says("Two.", "Do.")));
        CheckReport told =
                new CheckRunner(List.of(chatty), 1, CheckWatch.NONE)
                        .run(List.of(Toys.source("d.yaml", DEVICE)));
        List<KnownFinding> entries =
                Sifted.of(told, List.of(), TODAY).accept("We know.", TODAY.plusYears(1));

        assertEquals(1, entries.size());
        assertEquals(List.of(), Sifted.of(told, entries, TODAY).open());
        assertEquals("We know.", entries.get(0).reason());
    }

    private static KnownFinding entry(String check, String device, String subject, LocalDate day) {
        return new KnownFinding(check, device, subject, "Measured.", day, Origin.MEMORY);
    }

    private static List<String> subjects(List<Found> found) {
        return found.stream().map(f -> Objects.requireNonNull(f.finding()).subject()).toList();
    }

    private static CheckReport run(CheckSource source) {
        return new CheckRunner(List.of(Toys.everyJoint("good")), 1, CheckWatch.NONE)
                .run(List.of(source));
    }
}
