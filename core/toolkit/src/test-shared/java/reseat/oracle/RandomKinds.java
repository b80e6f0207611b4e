package reseat.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import reseat.model.Kind;

/** The kinds of random devices: those with a role that the rules ask for, and some without. */
final class RandomKinds {

    private RandomKinds() {}

    static List<Kind> all() {
        List<Kind> kinds = new ArrayList<>();
        kinds.add(kind(Kind.Scope.PART, "cell", Optional.of(Kind.Role.CELL), false));
        kinds.add(kind(Kind.Scope.PART, "board", Optional.of(Kind.Role.BOARD), false));
        kinds.add(kind(Kind.Scope.PART, "display", Optional.of(Kind.Role.DISPLAY), false));
        kinds.add(kind(Kind.Scope.PART, "flex", Optional.of(Kind.Role.CABLE), false));
        kinds.add(kind(Kind.Scope.PART, "cover", Optional.of(Kind.Role.COVER), false));
        kinds.add(Kind.plain(Kind.Scope.PART, "part"));
        kinds.add(kind(Kind.Scope.JOINT, "screw", Optional.of(Kind.Role.SCREW), false));
        kinds.add(kind(Kind.Scope.JOINT, "plug", Optional.of(Kind.Role.CONNECTOR), false));
        kinds.add(kind(Kind.Scope.JOINT, "clip", Optional.of(Kind.Role.CLIP), false));
        kinds.add(Kind.plain(Kind.Scope.JOINT, "joint"));
        kinds.add(kind(Kind.Scope.MANIPULATION, "pry", Optional.empty(), true));
        kinds.add(Kind.plain(Kind.Scope.MANIPULATION, "undo"));
        kinds.add(Kind.plain(Kind.Scope.MANIPULATION, "lift"));
        return kinds;
    }

    private static Kind kind(
            Kind.Scope scope, String id, Optional<Kind.Role> role, boolean forceful) {
        return new Kind(
                id,
                scope,
                id,
                "",
                "",
                role,
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
                OptionalInt.empty(),
                Optional.empty(),
                forceful,
                false,
                false,
                false,
                Optional.empty(),
                "");
    }

    static String part(Random random) {
        int roll = random.nextInt(100);
        return roll < 50
                ? "part"
                : roll < 70 ? "cover" : roll < 80 ? "board" : roll < 88 ? "cell" : roll < 94 ? "display" : "flex";
    }

    static String joint(Random random, boolean slack) {
        int roll = random.nextInt(100);
        if (slack) {
            return roll < 75 ? "plug" : roll < 82 ? "screw" : "joint";
        }
        return roll < 45 ? "screw" : roll < 65 ? "clip" : roll < 72 ? "plug" : "joint";
    }
}
