package reseat.query;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.plan.Advice;

/** Creates the rows of acts. */
final class ActRows {

    private ActRows() {}

    static ActRow row(
            Device device, int index, CostedAct costed, List<Advice> advice, List<String> live) {
        Act act = costed.act();
        String subject;
        String pointer;
        ActRow.Kind kind;
        List<String> parts = List.of();
        Optional<Kind.Role> role = Optional.empty();
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            kind = ActRow.Kind.RELEASE;
            subject = joint.id();
            pointer = "/joints/" + joint.id();
            parts = joint.holds();
            role = device.kindOf(joint).role();
        } else if (act instanceof Act.MoveParts move) {
            kind = ActRow.Kind.MOVE;
            subject = move.parts().get(0);
            pointer = "/parts/" + subject;
            parts = move.parts();
        } else {
            kind = ActRow.Kind.PREPARE;
            subject = ((Act.Prepared) act).prepare();
            pointer = "/prepare/" + subject;
        }
        return new ActRow(
                index,
                act.id(),
                kind,
                subject,
                pointer,
                parts,
                role,
                costed.tool(),
                costed.posture(),
                costed.ms(),
                costed.setupMs(),
                live,
                advice.stream()
                        .filter(a -> a.kind() == Advice.Kind.HAZARD)
                        .map(Advice::subject)
                        .toList(),
                advice.stream()
                        .filter(a -> a.kind() == Advice.Kind.HANDLING)
                        .map(Advice::text)
                        .map(Objects::requireNonNull)
                        .toList());
    }
}
