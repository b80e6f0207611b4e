package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.fasten.CutPlan;
import reseat.fasten.FastenerInputException;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Joint;
import reseat.plan.Advice;
import reseat.plan.Tally;
import reseat.sheet.Group;
import reseat.sheet.Names;
import reseat.sheet.Step;

/** The steps of the teardown. */
final class TeardownSteps {

    private final Source source;
    private final Progress progress;
    private final Cautions cautions;
    private final StepWords words;

    TeardownSteps(Source source, Progress progress, Cautions cautions) {
        this.source = source;
        this.progress = progress;
        this.cautions = cautions;
        this.words = new StepWords(source);
    }

    List<Group> make() {
        cautions.begin();
        Groups groups = new Groups(source.device().usualPosture());
        for (Run run : source.runs().teardown()) {
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

    private List<CostedAct> acts(Run run) {
        return run.acts().stream().map(source.plan().acts()::get).toList();
    }

    private Step step(Run run) {
        List<Advice> advice = Cautions.merge(source.notes().teardown(), run.acts());
        Cautions.Before before = cautions.before(advice, run.number());
        Map<String, CutPlan> cuts = cuts(run);
        Set<String> ruins = ruins(run);
        List<String> details = new ArrayList<>();
        ruins.forEach(part -> details.add(destroys(part)));
        cuts.values().forEach(cut -> details.addAll(CutWords.of(cut)));
        details.addAll(Cautions.details(advice, source.runs()::numberOf));
        return new Step(
                run.number(),
                acts(run).stream().map(act -> act.act().id()).toList(),
                Optional.empty(),
                before.inFull(),
                before.reminders(),
                text(run, advice),
                words.count(Tally.Side.OUT, run),
                details,
                new Step.Facts(
                        words.screws(releases(run).stream().map(Act.Release::joint).toList()),
                        Optional.empty(),
                        cuts,
                        List.of(),
                        List.copyOf(ruins),
                        List.of()),
                progress.onBefore(run.first()),
                acts(run).stream().mapToLong(CostedAct::ms).sum(),
                0,
                progress.doneMs(run.last()));
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

    /** A bond with an invalid shape has no depths; the checks report it. */
    private Map<String, CutPlan> cuts(Run run) {
        Map<String, CutPlan> cuts = new LinkedHashMap<>();
        for (Act.Release release : releases(run)) {
            source.device()
                    .joint(release.joint())
                    .bond()
                    .ifPresent(
                            bond -> {
                                try {
                                    cuts.put(release.joint(), CutPlan.of(bond));
                                } catch (FastenerInputException e) {
                                    cuts.remove(release.joint());
                                }
                            });
        }
        return cuts;
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
                    + ")";
        }
        List<String> parts = ((Act.MoveParts) first).parts();
        boolean tethered = advice.stream().anyMatch(a -> a.kind() == Advice.Kind.TETHER);
        return words.verb(source.device().move(parts.get(0)).kind(), "Lift off")
                + (parts.size() > 1 ? ", together: " : ": ")
                + names.parts(parts)
                + (tethered ? " (laid aside, not off)" : "");
    }
}
