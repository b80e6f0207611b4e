package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.fasten.SeatOrder;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.plan.Advice;
import reseat.plan.PlacedTest;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;
import reseat.sheet.Group;
import reseat.sheet.Step;

/** The steps of the rebuild, with the tests where they belong. */
final class RebuildSteps {

    private final Source source;
    private final Progress progress;
    private final Cautions cautions;
    private final StepWords words;
    private final RebuildWords rebuildWords;
    private Optional<String> closing = Optional.empty();

    /** Number of rebuild acts covered so far. */
    private int done;

    RebuildSteps(Source source, Progress progress, Cautions cautions) {
        this.source = source;
        this.progress = progress;
        this.cautions = cautions;
        this.words = new StepWords(source);
        this.rebuildWords = new RebuildWords(source);
    }

    List<Group> make() {
        cautions.begin();
        List<RebuildAct> acts = source.rebuild().acts();
        Groups groups =
                new Groups(source.device(), acts.isEmpty() ? source.device().usualPosture() : acts.get(0).posture());
        for (Run run : source.runs().rebuild()) {
            if (run.test().isPresent()) {
                PlacedTest test = run.test().get();
                groups.add(
                        test.closing().isPresent() ? "Test before closing" : "Test",
                        Optional.empty(),
                        groups.posture(),
                        0,
                        test(run, test));
                continue;
            }
            RebuildAct first = acts.get(run.first());
            long setupMs =
                    acts.subList(done, run.last() + 1).stream()
                            .mapToLong(RebuildAct::setupMs)
                            .sum();
            done = run.last() + 1;
            groups.add(
                    first.kind() == RebuildAct.Kind.UNDO_PREPARE
                            ? "Undo the preparations"
                            : words.heading(first.posture(), first.tool()),
                    Optional.of(first.tool()),
                    first.posture(),
                    setupMs,
                    step(run));
        }
        return groups.all();
    }

    private Step test(Run run, PlacedTest test) {
        List<String> details = new ArrayList<>();
        if (!test.closing().equals(closing)) {
            test.closing()
                    .ifPresent(
                            joint ->
                                    details.add(
                                            "Now, because "
                                                    + source.names().joint(joint)
                                                    + " closes for good in what follows. The"
                                                    + " device is open and under power: no metal"
                                                    + " tool in it."));
        }
        closing = test.closing();
        return new Step(
                run.number(),
                Step.Kind.TEST,
                List.of(),
                Optional.of(test.test().id()),
                List.of(),
                List.of(),
                Source.sentence(test.test().text()),
                "pass / fail",
                details,
                Step.Facts.NONE,
                progress.onBeforeRebuild(test.before()),
                0,
                0,
                progress.rebuildMs(test.before()));
    }

    private Step step(Run run) {
        List<RebuildAct> acts = run.acts().stream().map(source.rebuild().acts()::get).toList();
        List<Advice> advice = Cautions.merge(source.notes().rebuild(), run.acts());
        Cautions.Before before = cautions.before(advice, run.number());
        List<ConsumableUse> uses = RebuildWords.uses(acts);
        long waitMs = acts.stream().mapToLong(RebuildAct::dwellMs).max().orElse(0);
        List<String> details = rebuildWords.details(run, acts, uses, waitMs);
        details.addAll(Cautions.details(advice, source.runs()::numberOf));
        Optional<SeatOrder> order = run.fastening().map(fastening -> fastening.order());
        return new Step(
                run.number(),
                Step.Kind.WORK,
                acts.stream().map(act -> act.act().id()).toList(),
                Optional.empty(),
                before.inFull(),
                before.reminders(),
                rebuildWords.text(run, acts),
                words.count(Tally.Side.IN, run),
                details,
                new Step.Facts(
                        words.screws(joints(acts)),
                        order,
                        Map.of(),
                        Map.of(),
                        uses,
                        List.of(),
                        acts.stream().flatMap(act -> act.fresh().stream()).distinct().toList()),
                progress.onBeforeRebuild(run.first()),
                acts.stream().mapToLong(RebuildAct::ms).sum(),
                waitMs,
                progress.rebuildMs(run.last() + 1));
    }

    static List<String> joints(List<RebuildAct> acts) {
        return acts.stream()
                .map(RebuildAct::act)
                .filter(Act.Release.class::isInstance)
                .map(act -> ((Act.Release) act).joint())
                .toList();
    }
}
