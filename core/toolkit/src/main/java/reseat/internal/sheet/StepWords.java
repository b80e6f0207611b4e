package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Joint;
import reseat.plan.Tally;
import reseat.sheet.Caution;
import reseat.sheet.Names;
import reseat.sheet.Step;
import reseat.text.ListText;

/** What steps of the teardown and of the rebuild have in common. */
record StepWords(Source source) {

    String heading(String posture, String tool) {
        return Names.posture(posture) + " · " + source.names().tool(tool);
    }

    String verb(String manipulation, String otherwise) {
        String verb = source.device().manipulation(manipulation).verb();
        return verb.isEmpty() ? otherwise : verb;
    }

    String restoreVerb(String manipulation, String otherwise) {
        String verb = source.device().manipulation(manipulation).restoreVerb();
        return verb.isEmpty() ? otherwise : verb;
    }

    List<Step.Screw> screws(List<String> joints) {
        List<Step.Screw> screws = new ArrayList<>();
        for (String id : joints) {
            Joint joint = source.device().joint(id);
            joint.seat()
                    .ifPresent(
                            seat ->
                                    screws.add(
                                            new Step.Screw(
                                                    id,
                                                    seat.screw(),
                                                    seat.torqueNm(),
                                                    seat.torqueSource(),
                                                    tray(joint, seat.screw()))));
        }
        return screws;
    }

    private OptionalInt tray(Joint joint, String type) {
        return source.device().kindOf(joint).captive()
                ? OptionalInt.empty()
                : source.trays().number(type);
    }

    /** Returns the trays of screws in words, such as {@code tray 1}; empty if they need none. */
    static String trays(List<Step.Screw> screws) {
        List<String> numbers =
                screws.stream()
                        .flatMap(screw -> screw.tray().stream().boxed())
                        .distinct()
                        .map(String::valueOf)
                        .toList();
        return numbers.isEmpty()
                ? ""
                : (numbers.size() == 1 ? "tray\u00a0" : "trays\u00a0") + ListText.and(numbers);
    }

    /** Returns messages about screws that look alike, of which a step turns one. */
    List<Caution> alike(List<Step.Screw> screws, int step) {
        Set<String> types = new LinkedHashSet<>();
        screws.stream()
                .filter(screw -> screw.tray().isPresent())
                .forEach(screw -> types.add(screw.type()));
        return source.trays().of(types).stream()
                .map(
                        pair ->
                                new Caution(
                                        Trays.signal(pair),
                                        pair.one() + "+" + pair.other(),
                                        pair.one() + " and " + pair.other() + " look alike",
                                        source.trays().text(pair, source.names()),
                                        Optional.empty(),
                                        step))
                .toList();
    }

    /** Returns the running count after a step, or nothing where no screw goes out or in. */
    String count(Tally.Side side, Run run) {
        Map<String, Integer> types = new LinkedHashMap<>();
        int all = 0;
        for (Tally.Entry entry : source.tally().entries()) {
            if (entry.side() == side && run.acts().contains(entry.act())) {
                types.put(entry.type(), entry.outOfType());
                all = entry.outInAll();
            }
        }
        if (types.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        types.forEach((type, out) -> words.add(type + " " + out));
        return "out: " + String.join(", ", words) + " | all " + all;
    }
}
