package reseat.internal.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import reseat.model.ConsumableUse;
import reseat.model.Duration;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Way;
import reseat.text.ListText;
import reseat.text.QuoteText;

/**
 * Creates moves and ways, with defaults from their kinds where the file states nothing. The kind of
 * part or joint takes precedence over its default manipulation. If the file names another
 * manipulation, that one takes precedence, and it alone gives tool and posture: a plug that is
 * usually levered off with a tool needs none when it is lifted off with a fingernail.
 */
final class Acts {

    private final KindTable kinds;
    private final KindTable.Uses uses;
    private final String hand;
    private final String usualPosture;
    private final boolean resolved;
    private final Problems problems;

    Acts(
            KindTable kinds,
            KindTable.Uses uses,
            String hand,
            String usualPosture,
            boolean resolved,
            Problems problems) {
        this.kinds = kinds;
        this.uses = uses;
        this.hand = hand;
        this.usualPosture = usualPosture;
        this.resolved = resolved;
        this.problems = problems;
    }

    /**
     * Creates the move of a part.
     *
     * @param part id of the part
     * @param look the facts of the part
     * @param partKind its kind
     */
    Move move(String part, Look look, KindTable.Entry partKind) {
        Look move = look.look("move");
        Silent act =
                new Silent(
                        () -> "part " + part,
                        move,
                        stated(look, "move", move),
                        partKind,
                        resolved ? "act" : "lift");
        return new Move(
                act.kind.id(),
                act.tool(Optional.empty()),
                act.posture(usualPosture),
                act.ms("time", "ms", Kind::time),
                act.ms("restoreTime", "restoreMs", Kind::restoreTime),
                move.texts("handling"),
                move.texts("hazards"));
    }

    /**
     * Creates the ways of a joint.
     *
     * @param joint id of the joint
     * @param look the facts of the joint
     * @param jointKind its kind
     * @param driver the tool that turns its screw, if it has one
     * @param posture posture of its ways unless file or kind states one
     * @param spread turns ids of entries with seats into those of their joints
     */
    Map<String, Way> ways(
            String joint,
            Look look,
            KindTable.Entry jointKind,
            Optional<String> driver,
            String posture,
            UnaryOperator<List<String>> spread) {
        JointFacts facts = new JointFacts(joint, jointKind, driver, posture, spread);
        if (!look.has("ways")) {
            Look silent = new Look(null, look.at());
            return Map.of(
                    "usual",
                    way(
                            () -> "joint " + joint,
                            "usual",
                            silent,
                            Optional.empty(),
                            facts));
        }
        Look all = look.look("ways");
        Map<String, Way> ways = new LinkedHashMap<>(2); // most have one
        look.each(
                "ways",
                (id, way) ->
                        ways.put(
                                id,
                                way(
                                        () -> "joint " + joint + ", way " + id,
                                        id,
                                        way,
                                        stated(all, id, way),
                                        facts)));
        return ways;
    }

    /** What the ways of a joint have in common. */
    private record JointFacts(
            String joint,
            KindTable.Entry kind,
            Optional<String> driver,
            String posture,
            UnaryOperator<List<String>> spread) {}

    private Way way(
            Supplier<String> who,
            String id,
            Look look,
            Optional<String> stated,
            JointFacts joint) {
        KindTable.Entry jointKind = joint.kind();
        Silent act = new Silent(who, look, stated, jointKind, "act");
        if (!resolved
                && stated.isEmpty()
                && jointKind.way().isEmpty()
                && registered(jointKind.kind())) {
            problems.error(
                    look.at(),
                    who.get()
                            + ": nothing says how it is released: give ways with a kind each, or a way to the kind of joint "
                            + QuoteText.of(jointKind.kind().id()));
        }
        List<ConsumableUse> consumes =
                look.has("consumes")
                        ? uses.read(look, "consumes")
                        : resolved
                                ? List.of()
                                : act.first(
                                                kind ->
                                                        Optional.of(kind.consumes())
                                                                .filter(c -> !c.isEmpty()))
                                        .orElse(List.of());
        return new Way(
                id,
                act.kind.id(),
                act.tool(joint.driver()),
                act.posture(joint.posture()),
                act.ms("time", "ms", Kind::time),
                act.ms("restoreTime", "restoreMs", Kind::restoreTime),
                consumes,
                look.texts("ruins"),
                look.text("restore", ""),
                look.texts("handling"),
                look.texts("hazards"),
                strainedBy(who, look, joint));
    }

    private Optional<List<String>> strainedBy(
            Supplier<String> who, Look look, JointFacts joint) {
        Optional<List<String>> all = look.statedTexts("strainedBy").map(joint.spread());
        if (all.isPresent() && all.get().contains(joint.joint())) {
            problems.error(look.at("strainedBy"), who.get() + " is strained by itself");
        }
        return all;
    }

    /** Whether a kind is registered: what follows from a wrong name alone is not told as well. */
    private boolean registered(Kind kind) {
        return kinds.registered(kind.scope(), kind.id());
    }

    /** The kind of manipulation that a file states, in the short or in the long form. */
    private static Optional<String> stated(Look parent, String key, Look full) {
        String brief = parent.fields().text(key);
        return brief == null ? full.text("kind") : Optional.of(brief);
    }

    /** An act, with the kinds that supply its defaults. */
    private final class Silent {
        private final Supplier<String> who;
        private final Look look;
        private final Kind kind;
        private final boolean usual;
        private final Kind held;
        private final boolean told;

        Silent(
                Supplier<String> who,
                Look look,
                Optional<String> stated,
                KindTable.Entry held,
                String otherwise) {
            this.who = who;
            this.look = look;
            String id =
                    stated.isPresent()
                            ? stated.get()
                            : resolved ? otherwise : held.way().orElse(otherwise);
            this.kind = kinds.use(Kind.Scope.MANIPULATION, id).kind();
            this.usual = held.way().orElse(otherwise).equals(id);
            this.told = stated.isPresent();
            this.held = held.kind();
        }

        /** Whether a value is missing for a reason other than a wrong name. */
        private boolean spokenFor() {
            return registered(held) && (!told || registered(kind));
        }

        private List<Kind> speakers() {
            return usual ? List.of(held, kind) : List.of(kind, held);
        }

        private List<Kind> handSpeakers() {
            return usual ? speakers() : List.of(kind);
        }

        <T> Optional<T> first(Function<Kind, Optional<T>> fact) {
            return first(speakers(), fact);
        }

        private <T> Optional<T> first(List<Kind> from, Function<Kind, Optional<T>> fact) {
            for (Kind kind : from) {
                Optional<T> spoken = fact.apply(kind);
                if (spoken.isPresent()) {
                    return spoken;
                }
            }
            return Optional.empty();
        }

        String tool(Optional<String> driver) {
            String given = look.fields().text("tool");
            return given != null
                    ? given
                    : driver.or(() -> first(handSpeakers(), Kind::tool)).orElse(hand);
        }

        String posture(String otherwise) {
            String given = look.fields().text("posture");
            return given != null ? given : first(handSpeakers(), Kind::posture).orElse(otherwise);
        }

        long ms(String key, String bareKey, Function<Kind, Optional<Duration>> time) {
            OptionalLong own = look.ms(key, bareKey);
            if (own.isPresent() || resolved || look.has(key) || look.has(bareKey)) {
                return own.orElse(0L);
            }
            Optional<Duration> silent = first(time);
            if (silent.isEmpty() && spokenFor()) {
                problems.error(
                        look.at(),
                        who.get()
                                + ": no value for "
                                + key
                                + ": give "
                                + QuoteText.of(key)
                                + " here, or to the kind "
                                + ListText.or(
                                        speakers().stream()
                                                .map(each -> QuoteText.of(each.id()))
                                                .distinct()
                                                .toList()));
            }
            return silent.map(Duration::ms).orElse(0L);
        }
    }
}
