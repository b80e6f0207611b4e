package reseat.console.check;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.CheckSource;
import reseat.given.Bench;
import reseat.model.Device;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.model.Severity;

/** Checks and sources for tests of the runner. */
final class Toys {

    private Toys() {}

    static CheckInfo info(String id, CheckInfo.Need... needs) {
        return new CheckInfo(
                id,
                "Title of " + id,
                "It finds something.",
                "It matters.",
                Severity.WARNING,
                List.of("toy"),
                List.of(),
                Set.of(needs),
                1);
    }

    /** A check that does as told. */
    static Check check(CheckInfo info, Function<CheckInput, List<Finding>> run) {
        return new Check() {
            @Override
            public CheckInfo info() {
                return info;
            }

            @Override
            public List<Finding> run(CheckInput input) {
                return run.apply(input);
            }
        };
    }

    /** A check that finds every joint. */
    static Check everyJoint(String id) {
        return check(
                info(id),
                input ->
                        input.device().joints().keySet().stream()
                                .map(j -> input.finding("/joints/" + j))
                                .map(draft -> draft.says("It is there.", "Leave it."))
                                .toList());
    }

    /** A source with these devices. */
    static CheckSource source(String name, Device... devices) {
        return source(
                name,
                () ->
                        new CheckSource.Content(
                                List.of(devices).stream().map(CheckInput::of).toList(), List.of()));
    }

    static CheckSource source(String name, java.util.function.Supplier<CheckSource.Content> read) {
        return new CheckSource() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Content read() {
                return read.get();
            }
        };
    }

    static CheckSource broken(String name) {
        return source(
                name,
                () ->
                        new CheckSource.Content(
                                List.of(),
                                List.of(Problem.error(new Origin(name, 3, 1), "it is torn"))));
    }

    static Device device(String... joints) {
        return build(new Bench(), joints);
    }

    static Device variant(String id, String... joints) {
        return build(new Bench().variant(id), joints);
    }

    private static Device build(Bench made, String... joints) {
        Bench bench = made.type("m2x4", "M2", 4);
        for (String joint : joints) {
            bench.screw(joint, Bench.seat("m2x4").lengths(0, 4));
        }
        return bench.build();
    }
}
