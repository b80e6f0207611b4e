package reseat.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.Prepare;
import reseat.model.SetupTable;
import reseat.model.Supply;
import reseat.model.Tool;
import reseat.model.Way;

/**
 * Sketches a device in a few lines. The base is the frame. Moves take 2000 + 1000 ms and releases
 * 500 + 300 ms by hand, face up; each change of tool takes 100 ms from the hand and 150 ms
 * otherwise, turning the device 700 ms and back 800 ms.
 */
final class Sketch {

    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<String, Joint> joints = new LinkedHashMap<>();
    private final List<Prepare> prepares = new ArrayList<>();

    Sketch() {
        parts.put("frame", part("frame", Optional.empty(), List.of()));
    }

    /** A part, and what is in its way. */
    Sketch part(String id, String... under) {
        return moved(id, "hand", "face-up", 2000, 1000, under);
    }

    Sketch moved(String id, String tool, String posture, long ms, long restoreMs, String... under) {
        Move move = new Move("lift", tool, posture, ms, restoreMs, List.of(), List.of());
        parts.put(id, part(id, Optional.of(move), List.of(under)));
        return this;
    }

    Sketch includes(String id, String... others) {
        parts.computeIfPresent(
                id,
                (i, p) ->
                        new Part(
                                i,
                                p.name(),
                                p.kind(),
                                p.under(),
                                p.move(),
                                List.of(others),
                                Optional.empty(),
                                List.of(),
                                List.of()));
        return this;
    }

    private static Part part(String id, Optional<Move> move, List<String> under) {
        return new Part(
                id,
                title(id),
                "part",
                under,
                move,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    /** A rigid joint; its site last. */
    Sketch joint(String id, String... holds) {
        joints.put(
                id,
                new Joint(
                        id,
                        title(id),
                        id.endsWith("screw") ? "screw" : "joint",
                        List.of(holds),
                        List.of(),
                        false,
                        List.of(),
                        List.of(),
                        Map.of("usual", way("usual", "hand", "face-up", 500, 300)),
                        Optional.empty(),
                        Optional.empty(),
                        1));
        return this;
    }

    /** A joint with slack. */
    Sketch cable(String id, String... holds) {
        joint(id, holds);
        return change(
                id, j -> copy(j, j.under(), true, j.needs().orElse(List.of()), j.cuts(), j.ways()));
    }

    Sketch hiddenBy(String id, String... under) {
        return change(
                id,
                j ->
                        copy(
                                j,
                                List.of(under),
                                j.slack(),
                                j.needs().orElse(List.of()),
                                j.cuts(),
                                j.ways()));
    }

    Sketch needs(String id, String... supplies) {
        return change(
                id, j -> copy(j, j.under(), j.slack(), List.of(supplies), j.cuts(), j.ways()));
    }

    Sketch cuts(String id, String... supplies) {
        return change(
                id,
                j ->
                        copy(
                                j,
                                j.under(),
                                j.slack(),
                                j.needs().orElse(List.of()),
                                List.of(supplies),
                                j.ways()));
    }

    /** The ways of a joint, in place of the usual one. */
    Sketch ways(String id, Way... ways) {
        Map<String, Way> byId = new LinkedHashMap<>();
        Arrays.stream(ways).forEach(way -> byId.put(way.id(), way));
        return change(
                id,
                j -> copy(j, j.under(), j.slack(), j.needs().orElse(List.of()), j.cuts(), byId));
    }

    Sketch prepare(String id, String text, long ms, long restoreMs) {
        prepares.add(new Prepare(id, text, ms, restoreMs, List.of()));
        return this;
    }

    static Way way(
            String id, String tool, String posture, long ms, long restoreMs, String... ruins) {
        return new Way(
                id,
                "undo",
                tool,
                posture,
                ms,
                restoreMs,
                List.of(),
                List.of(ruins),
                "",
                List.of(),
                List.of());
    }

    private Sketch change(String id, UnaryOperator<Joint> change) {
        joints.computeIfPresent(id, (i, joint) -> change.apply(joint));
        return this;
    }

    private static Joint copy(
            Joint j,
            List<String> under,
            boolean slack,
            List<String> needs,
            List<String> cuts,
            Map<String, Way> ways) {
        return new Joint(
                j.id(),
                j.name(),
                j.kind(),
                j.holds(),
                under,
                slack,
                needs,
                cuts,
                ways,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    Device device() {
        return Device.build(
                "sketch",
                facts -> {
                    facts.base("frame").hand("hand").usualPosture("face-up").setup(setup());
                    facts.add(new Tool("t5", "T5 bit", Optional.empty(), Optional.empty()));
                    facts.add(new Tool("tweezers", "Tweezers", Optional.empty(), Optional.empty()));
                    facts.add(new Supply("cell", "Main cell"));
                    facts.add(new Supply("dock", "Dock"));
                    facts.add(screws());
                    parts.values().forEach(facts::add);
                    joints.values().forEach(facts::add);
                    prepares.forEach(facts::add);
                });
    }

    private static Kind screws() {
        return new Kind(
                "screw",
                Kind.Scope.JOINT,
                "screw",
                "Unscrew",
                "Screw in",
                Optional.of(Kind.Role.SCREW),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                false,
                false,
                false,
                0,
                java.util.OptionalInt.empty(),
                Optional.empty(),
                false,
                false,
                false,
                false,
                Optional.empty(),
                "made up");
    }

    private static SetupTable setup() {
        return new SetupTable(
                Map.of(
                        "hand", Map.of("t5", 100L, "tweezers", 100L),
                        "t5", Map.of("hand", 150L, "tweezers", 150L),
                        "tweezers", Map.of("hand", 150L, "t5", 150L)),
                Map.of("face-up", Map.of("face-down", 700L), "face-down", Map.of("face-up", 800L)));
    }

    /** "top-case" is named "Top case". */
    private static String title(String id) {
        return Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
    }

    static Act release(String joint) {
        return new Act.Release(joint, "usual");
    }

    static Act release(String joint, String way) {
        return new Act.Release(joint, way);
    }

    static Act move(String... parts) {
        return new Act.MoveParts(List.of(parts));
    }

    static Act prepared(String id) {
        return new Act.Prepared(id);
    }
}
