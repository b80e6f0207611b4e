package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Signal;
import reseat.plan.Advice;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;
import reseat.sheet.Caution;
import reseat.sheet.Group;
import reseat.sheet.Step;

/** The steps of the rebuild, with the tests where they belong. */
final class RebuildSteps {

    private final Source source;
    private final Progress progress;
    private final Cautions cautions;
    private final StepWords words;
    private final RebuildWords rebuildWords;
    private long doneMs;

    RebuildSteps(Source source, Progress progress, Cautions cautions) {
        this.source = source;
        this.progress = progress;
        this.cautions = cautions;
        this.words = new StepWords(source);
        this.rebuildWords = new RebuildWords(source);
        this.doneMs = progress.rebuildMs(0);
    }

    List<Group> make() {
        cautions.begin();
        List<RebuildAct> acts = source.rebuild().acts();
        Groups groups =
                new Groups(
                        source.device(),
                        acts.isEmpty() ? source.device().usualPosture() : acts.get(0).posture());
        for (Run run : source.runs().rebuild()) {
            List<RebuildAct> own = run.acts().stream().map(acts::get).toList();
            long setupMs = own.stream().mapToLong(RebuildAct::setupMs).sum();
            doneMs += setupMs + own.stream().mapToLong(RebuildAct::ms).sum();
            RebuildAct first = own.get(0);
            Step step = step(run, own);
            groups.add(
                    title(run, first),
                    step.kind() == Step.Kind.WORK || step.kind() == Step.Kind.BED
                            ? Optional.of(first.tool())
                            : Optional.empty(),
                    first.posture(),
                    setupMs,
                    step);
        }
        return groups.all();
    }

    private String title(Run run, RebuildAct first) {
        return switch (first.kind()) {
            case UNDO_PREPARE -> "Undo the preparations";
            case WAIT -> "Wait";
            case DOCK, SWITCH_ON, TEST, SWITCH_OFF, UNDOCK ->
                    rebuildWords.closing(run).isPresent() ? "Test before closing" : "Test";
            case MAKE, PUT_BACK, FOLD_BACK, BED -> words.heading(first.posture(), first.tool());
        };
    }

    private Step step(Run run, List<RebuildAct> acts) {
        List<Advice> advice = Cautions.merge(source.notes().rebuild(), run.acts());
        List<Step.Screw> screws = words.screws(RebuildWords.joints(acts));
        Cautions.Before before =
                cautions.with(cautions.before(advice, run.number()), own(run, screws));
        List<ConsumableUse> uses = RebuildWords.uses(acts);
        List<String> details = rebuildWords.details(run, acts, uses);
        details.addAll(Cautions.details(advice, source.runs()::numberOf));
        Step.Kind kind = kind(acts.get(0).kind());
        return new Step(
                run.number(),
                kind,
                acts.stream().flatMap(act -> act.act().stream()).map(Act::id).toList(),
                run.test().map(test -> test.test().id()),
                before.inFull(),
                before.reminders(),
                rebuildWords.text(run, acts),
                kind == Step.Kind.TEST ? "pass / fail" : words.count(Tally.Side.IN, run),
                details,
                new Step.Facts(
                        screws,
                        run.isLastOfFastening()
                                ? run.fastening().map(fastening -> fastening.order())
                                : Optional.empty(),
                        Map.of(),
                        rebuildWords.strips(acts),
                        uses,
                        List.of(),
                        acts.stream().flatMap(act -> act.fresh().stream()).distinct().toList()),
                progress.onBeforeRebuild(run.first()),
                acts.stream().mapToLong(RebuildAct::ms).sum(),
                acts.stream().mapToLong(RebuildAct::dwellMs).sum(),
                doneMs);
    }

    /** Messages of the sheet: look-alikes, and before the first step what the order breaks. */
    private List<Caution> own(Run run, List<Step.Screw> screws) {
        List<Caution> own = new ArrayList<>(words.alike(screws, run.number()));
        if (run.first() == 0) {
            for (String broken : source.rebuild().broken()) {
                own.add(
                        new Caution(
                                Signal.CAUTION,
                                broken,
                                "order of the rebuild",
                                Source.sentence(broken),
                                Optional.empty(),
                                run.number()));
            }
        }
        return own;
    }

    private static Step.Kind kind(RebuildAct.Kind kind) {
        return switch (kind) {
            case MAKE, PUT_BACK, FOLD_BACK, UNDO_PREPARE -> Step.Kind.WORK;
            case BED -> Step.Kind.BED;
            case WAIT -> Step.Kind.WAIT;
            case DOCK, SWITCH_ON, SWITCH_OFF, UNDOCK -> Step.Kind.SWITCH;
            case TEST -> Step.Kind.TEST;
        };
    }
}
