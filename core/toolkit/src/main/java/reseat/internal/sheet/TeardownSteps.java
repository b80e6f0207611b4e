package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import reseat.fasten.CutPlan;
import reseat.fasten.FastenerInputException;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Supply;
import reseat.plan.Advice;
import reseat.plan.Tally;
import reseat.sheet.Group;
import reseat.sheet.Names;
import reseat.sheet.Step;
import reseat.text.ListText;

/** The steps of the teardown. */
final class TeardownSteps {

    private final Source source;
    private final Progress progress;
    private final Cautions cautions;
    private final StepWords words;

    /** Number of acts covered so far. */
    private int done;

    TeardownSteps(Source source, Progress progress, Cautions cautions) {
        this.source = source;
        this.progress = progress;
        this.cautions = cautions;
        this.words = new StepWords(source);
    }

    List<Group> make() {
        cautions.begin();
        Groups groups = new Groups(source.device(), source.device().usualPosture());
        for (Run run : source.runs().teardown()) {
            if (run.check().isPresent()) {
                groups.add("Check", Optional.empty(), groups.posture(), 0, check(run));
                continue;
            }
            done = run.last() + 1;
            CostedAct first = source.plan().acts().get(run.first());
            groups.add(
                    first.act() instanceof Act.Prepared
                            ? "First"
                            : words.heading(first.posture(), first.tool()),
                    Optional.of(first.tool()),
                    first.posture(),
                    acts(run).stream().mapToLong(CostedAct::setupMs).sum(),
                    step(run));
        }
        return groups.all();
    }

    private Step check(Run run) {
        CheckPoint check = run.check().orElseThrow();
        CheckWords text = new CheckWords(source);
        return new Step(
                run.number(),
                Step.Kind.CHECK,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                text.text(check),
                text.aside(check),
                text.details(check, lastCut()),
                Step.Facts.NONE,
                progress.onBefore(done),
                0,
                0,
                done == 0 ? 0 : progress.doneMs(done - 1));
    }

    /** Returns the step at which the last supply so far was cut. */
    private OptionalInt lastCut() {
        for (int at = done; at > 0; at--) {
            if (progress.onBefore(at).size() < progress.onBefore(at - 1).size()) {
                return OptionalInt.of(source.runs().numberOf(at - 1));
            }
        }
        return OptionalInt.empty();
    }

    private List<CostedAct> acts(Run run) {
        return run.acts().stream().map(source.plan().acts()::get).toList();
    }

    private Step step(Run run) {
        List<Advice> advice = Cautions.merge(source.notes().teardown(), run.acts());
        List<Step.Screw> screws =
                words.screws(releases(run).stream().map(Act.Release::joint).toList());
        Cautions.Before before =
                cautions.with(
                        cautions.before(advice, run.number()), words.alike(screws, run.number()));
        Map<String, CutPlan> cuts = cuts(run);
        Set<String> ruins = ruins(run);
        List<String> details = new ArrayList<>();
        ruins.forEach(part -> details.add(destroys(part)));
        heat(run).ifPresent(details::add);
        releases(run).forEach(release -> details.addAll(cutWords(release, cuts)));
        details.addAll(Cautions.details(advice, source.runs()::numberOf));
        releases(run).forEach(release -> details.addAll(loose(run, release.joint())));
        lettingGo(run).ifPresent(details::add);
        terminals(run).ifPresent(details::add);
        return new Step(
                run.number(),
                Step.Kind.WORK,
                acts(run).stream().map(act -> act.act().id()).toList(),
                Optional.empty(),
                before.inFull(),
                before.reminders(),
                text(run, advice),
                words.count(Tally.Side.OUT, run),
                details,
                new Step.Facts(
                        screws,
                        Optional.empty(),
                        cuts,
                        Map.of(),
                        List.of(),
                        List.copyOf(ruins),
                        List.of()),
                progress.onBefore(run.first()),
                acts(run).stream().mapToLong(CostedAct::ms).sum(),
                0,
                progress.doneMs(run.last()));
    }

    private Optional<String> heat(Run run) {
        return releases(run).stream()
                .flatMap(
                        release ->
                                Stream.of(
                                                source.device()
                                                        .manipulation(source.way(release).kind()),
                                                source.device()
                                                        .kindOf(
                                                                source.device()
                                                                        .joint(release.joint())))
                                        .flatMap(kind -> kind.heat().stream()))
                .findFirst()
                .map(heat -> "Heat: " + SafetyNeeds.words(heat) + ".");
    }

    /** A bond that is forced open without known depths needs the maker's. */
    private List<String> cutWords(Act.Release release, Map<String, CutPlan> cuts) {
        Device device = source.device();
        Joint joint = device.joint(release.joint());
        CutPlan cut = cuts.get(joint.id());
        if (cut != null) {
            return new CutWords(joint.bond().orElseThrow(), cut, source.names()::part).lines();
        }
        boolean forced =
                device.kindOf(joint).irreversible()
                        && device.manipulation(source.way(release).kind()).forceful();
        return forced
                ? List.of(
                        "No depth is known here: take it from the maker's document, and do not"
                                + " cut without one.")
                : List.of();
    }

    /**
     * The loose end of an isolator is under power, or comes under it when it touches its socket.
     */
    private List<String> loose(Run run, String id) {
        Joint joint = source.device().joint(id);
        if (!joint.isIsolator() || joint.gives()) {
            return List.of();
        }
        List<String> ends = ends(joint);
        for (int at = run.last() + 1; at < source.plan().acts().size(); at++) {
            if (source.plan().acts().get(at).act() instanceof Act.MoveParts move) {
                List<String> out = move.parts().stream().filter(ends::contains).toList();
                if (!out.isEmpty()) {
                    return List.of(
                            "Cap or tape over the loose end until "
                                    + source.names().parts(out)
                                    + (out.size() == 1 ? " is" : " are")
                                    + " out (step\u00a0"
                                    + source.runs().numberOf(at)
                                    + ").");
                }
            }
        }
        return List.of("Cap or tape over the loose end so that it cannot touch anything.");
    }

    /** The end that stays on a cell is the dangerous one; without a cell it is the loose part. */
    private List<String> ends(Joint joint) {
        List<String> cells =
                joint.holds().stream()
                        .filter(part -> CheckPoints.isCell(source.device(), part))
                        .toList();
        return cells.isEmpty() ? joint.holds().subList(0, joint.holds().size() - 1) : cells;
    }

    /** An isolator that lets go with a move has no step of its own. */
    private Optional<String> lettingGo(Run run) {
        List<Supply> cut = new ArrayList<>(progress.onBefore(run.first()));
        cut.removeAll(progress.onBefore(run.last() + 1));
        List<String> isolators =
                source.device().joints().values().stream()
                        .filter(joint -> cut.stream().anyMatch(s -> joint.cuts().contains(s.id())))
                        .filter(joint -> letsGo(run, joint))
                        .map(joint -> source.names().joint(joint.id()))
                        .toList();
        return isolators.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Lets go with it: "
                                + ListText.and(isolators)
                                + ". This cuts "
                                + ListText.and(cut.stream().map(Supply::name).toList())
                                + ".");
    }

    private boolean letsGo(Run run, Joint joint) {
        return acts(run).stream()
                .anyMatch(
                        each ->
                                each.act() instanceof Act.MoveParts move
                                        && joint.letsGo(move.parts()));
    }

    private Optional<String> terminals(Run run) {
        List<String> cells = new ArrayList<>();
        for (CostedAct each : acts(run)) {
            if (each.act() instanceof Act.MoveParts move) {
                move.parts().stream()
                        .filter(part -> CheckPoints.isCell(source.device(), part))
                        .forEach(cells::add);
            }
        }
        return cells.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Tape over the terminals of " + source.names().parts(cells) + " at once.");
    }

    private List<Act.Release> releases(Run run) {
        return acts(run).stream()
                .map(CostedAct::act)
                .filter(Act.Release.class::isInstance)
                .map(Act.Release.class::cast)
                .toList();
    }

    private Set<String> ruins(Run run) {
        Set<String> ruins = new LinkedHashSet<>();
        releases(run).forEach(release -> ruins.addAll(source.way(release).ruins()));
        return ruins;
    }

    private String destroys(String part) {
        OptionalInt fresh = source.runs().numberOfNew(part);
        return "Destroys "
                + source.names().part(part)
                + (fresh.isPresent() ? "; a new one goes in at step " + fresh.getAsInt() : "")
                + ".";
    }

    /** A bond with an invalid shape or given depth has no depths; the checks report it. */
    private Map<String, CutPlan> cuts(Run run) {
        Map<String, CutPlan> cuts = new LinkedHashMap<>();
        for (Act.Release release : releases(run)) {
            source.device()
                    .joint(release.joint())
                    .bond()
                    .ifPresent(
                            bond -> {
                                try {
                                    CutPlan cut = CutPlan.of(bond);
                                    cut.judge(bond);
                                    cuts.put(release.joint(), cut);
                                } catch (FastenerInputException e) {
                                    cuts.remove(release.joint());
                                }
                            });
        }
        return cuts;
    }

    private static String into(List<Step.Screw> screws) {
        String trays = StepWords.trays(screws);
        return trays.isEmpty() ? "" : " into " + trays;
    }

    private String text(Run run, List<Advice> advice) {
        Act first = acts(run).get(0).act();
        if (first instanceof Act.Prepared prepared) {
            return Source.sentence(source.prepare(prepared).text());
        }
        Names names = source.names();
        if (first instanceof Act.Release release) {
            Joint joint = source.device().joint(release.joint());
            String verb = words.verb(source.way(release).kind(), "Release");
            List<String> ids = releases(run).stream().map(Act.Release::joint).toList();
            if (joint.seat().isEmpty()) {
                return verb + ": " + names.counted(ids);
            }
            return verb
                    + (verb.contains(" ") ? ": " : " ")
                    + ids.size()
                    + " × "
                    + joint.seat().get().screw()
                    + " ("
                    + names.together(ids)
                    + ")"
                    + into(words.screws(ids));
        }
        List<String> parts = ((Act.MoveParts) first).parts();
        boolean tethered = advice.stream().anyMatch(a -> a.kind() == Advice.Kind.TETHER);
        return words.verb(source.device().move(parts.get(0)).kind(), "Lift off")
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts)
                + (tethered ? " (laid aside, not off)" : "");
    }
}
