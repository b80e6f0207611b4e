package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.model.Joint;
import reseat.plan.Tally;
import reseat.sheet.Names;
import reseat.sheet.Step;

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
                                                    seat.torqueSource())));
        }
        return screws;
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
