package reseat.query;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Origin;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.Way;

/** Why a supply must be cut before something is touched, and what strains a joint, in words. */
public final class NeedText {

    private NeedText() {}

    /** Returns the word for a rule: {@code stated}, {@code power-first}, {@code work-on-cell}. */
    public static String word(Power.Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns why a joint needs a supply cut, as a clause. */
    public static String reason(Device device, Joint joint, Power.Need need) {
        return reason(device, need, Kind.Scope.JOINT, joint.kind(), pointer(joint));
    }

    /** Returns why a part needs a supply cut before it is moved alone, as a clause. */
    public static String reason(Device device, Part part, Power.Need need) {
        return reason(device, need, Kind.Scope.PART, part.kind(), pointer(part));
    }

    private static String reason(
            Device device, Power.Need need, Kind.Scope scope, String kind, String pointer) {
        return switch (need.rule()) {
            case POWER_FIRST -> "it is inside the device";
            case WORK_ON_CELL -> "it is work on " + source(device, need.supply()) + " itself";
            case STATED -> stated(device, scope, kind, pointer);
        };
    }

    private static String source(Device device, String supply) {
        return Optional.ofNullable(device.supplies().get(supply))
                .flatMap(known -> known.of())
                .orElse(supply);
    }

    /** Returns who states the needs of a joint, as a clause without the location. */
    public static String stated(Device device, Joint joint) {
        return stated(device, Kind.Scope.JOINT, joint.kind(), pointer(joint));
    }

    /** Returns who states the needs of a part, as a clause without the location. */
    public static String stated(Device device, Part part) {
        return stated(device, Kind.Scope.PART, part.kind(), pointer(part));
    }

    private static String stated(Device device, Kind.Scope scope, String kind, String pointer) {
        boolean byFile = device.origins().containsKey(pointer);
        boolean byKind =
                Optional.ofNullable(device.kinds(scope).get(kind)).flatMap(Kind::needs).isPresent();
        return byFile || !byKind ? "stated" : "stated by its kind " + kind;
    }

    /** Returns the JSON Pointer of the fact that a joint's need comes from. */
    public static String from(Device device, Joint joint, Power.Need need) {
        return from(device, need, pointer(joint));
    }

    /** Returns the JSON Pointer of the fact that a part's need comes from. */
    public static String from(Device device, Part part, Power.Need need) {
        return from(device, need, pointer(part));
    }

    private static String from(Device device, Power.Need need, String stated) {
        String supply = "/supplies/" + need.supply();
        return switch (need.rule()) {
            case STATED -> stated;
            case WORK_ON_CELL -> supply + "/of";
            case POWER_FIRST -> supply + (isMarked(device, need.supply()) ? "/first" : "");
        };
    }

    private static boolean isMarked(Device device, String supply) {
        return Optional.ofNullable(device.supplies().get(supply))
                .filter(known -> known.first())
                .isPresent();
    }

    private static String pointer(Joint joint) {
        return "/joints/" + joint.id() + "/needs";
    }

    private static String pointer(Part part) {
        return "/parts/" + part.id() + "/needs";
    }

    /** Returns where the needs of a joint are stated; empty if they are built in or not stated. */
    public static Optional<Origin> statedAt(Device device, Joint joint) {
        return statedAt(device, pointer(joint), "/kinds/joints/" + joint.kind() + "/needs");
    }

    /** Returns where the needs of a part are stated; empty if they are built in or not stated. */
    public static Optional<Origin> statedAt(Device device, Part part) {
        return statedAt(device, pointer(part), "/kinds/parts/" + part.kind() + "/needs");
    }

    private static Optional<Origin> statedAt(Device device, String own, String ofKind) {
        return Optional.ofNullable(device.origins().get(own))
                .or(() -> Optional.ofNullable(device.origins().get(ofKind)));
    }

    /** Returns why a way has the strains that it has, as a clause; empty if nothing strains it. */
    public static String strainReason(Device device, Joint joint, Way way) {
        List<String> strains = device.strainedBy(joint, way);
        if (strains.isEmpty()) {
            return "";
        }
        return way.strainedBy().isPresent()
                ? "stated"
                : way.kind() + " takes force, and what holds the same parts must be loose";
    }
}
