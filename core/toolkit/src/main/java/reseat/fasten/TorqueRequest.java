package reseat.fasten;

import java.util.Optional;
import java.util.OptionalDouble;
import reseat.model.Seat;

/**
 * The input of a torque estimate. Nothing here has a silent default: the estimate reports what is
 * missing, unless {@link Builder#assumeCautiously()} allows assumptions, which the estimate then
 * lists.
 *
 * @param strength class or grade of the screw
 * @param friction friction of thread and head
 * @param head bearing of the head
 * @param holeMm diameter of the hole under the head in millimetres; the ISO 273 medium hole if not
 *     given, listed as an assumption
 * @param drive recess of the screw
 * @param material material that the thread is in
 * @param form what the seat is
 * @param engagementMm length of engagement of full threads in millimetres
 * @param bossOuterMm outer diameter of the boss in millimetres; only for cautions
 * @param pullOutN load that pulls the insert out of its part in newtons; only for inserts
 * @param around plastic around an insert
 * @param clamped material that the head bears on
 * @param assumeCautiously whether friction, head and drive may be assumed if not given
 */
public record TorqueRequest(
        Optional<ScrewThread> thread,
        Optional<StrengthClass> strength,
        Optional<Friction> friction,
        Optional<HeadSize> head,
        OptionalDouble holeMm,
        Optional<Drive> drive,
        Optional<Material> material,
        Optional<Seat.Form> form,
        OptionalDouble engagementMm,
        OptionalDouble bossOuterMm,
        OptionalDouble pullOutN,
        Optional<Material> around,
        Optional<Material> clamped,
        boolean assumeCautiously) {

    public TorqueRequest {
        positive("engagement", "mm", engagementMm);
        positive("hole under the head", "mm", holeMm);
        positive("outer diameter of the boss", "mm", bossOuterMm);
        positive("pull-out load", "N", pullOutN);
    }

    private static void positive(String what, String unit, OptionalDouble value) {
        if (value.isPresent()
                && !(value.getAsDouble() > 0 && Double.isFinite(value.getAsDouble()))) {
            throw new FastenerInputException(
                    "The "
                            + what
                            + " must be above 0 "
                            + unit
                            + "; found "
                            + value.getAsDouble()
                            + " "
                            + unit
                            + ".");
        }
    }

    /** Returns an empty builder. */
    public static Builder builder() {
        return new Builder();
    }

    /** Builds a request. Not thread-safe. */
    public static final class Builder {
        private Optional<ScrewThread> thread = Optional.empty();
        private Optional<StrengthClass> strength = Optional.empty();
        private Optional<Friction> friction = Optional.empty();
        private Optional<HeadSize> head = Optional.empty();
        private OptionalDouble holeMm = OptionalDouble.empty();
        private Optional<Drive> drive = Optional.empty();
        private Optional<Material> material = Optional.empty();
        private Optional<Seat.Form> form = Optional.empty();
        private OptionalDouble engagementMm = OptionalDouble.empty();
        private OptionalDouble bossOuterMm = OptionalDouble.empty();
        private OptionalDouble pullOutN = OptionalDouble.empty();
        private Optional<Material> around = Optional.empty();
        private Optional<Material> clamped = Optional.empty();
        private boolean assume;

        private Builder() {}

        public Builder thread(ScrewThread value) {
            thread = Optional.of(value);
            return this;
        }

        public Builder strength(StrengthClass value) {
            strength = Optional.of(value);
            return this;
        }

        public Builder friction(Friction value) {
            friction = Optional.of(value);
            return this;
        }

        public Builder head(HeadSize value) {
            head = Optional.of(value);
            return this;
        }

        public Builder holeMm(double value) {
            holeMm = OptionalDouble.of(value);
            return this;
        }

        public Builder drive(Drive value) {
            drive = Optional.of(value);
            return this;
        }

        public Builder material(Material value) {
            material = Optional.of(value);
            return this;
        }

        public Builder form(Seat.Form value) {
            form = Optional.of(value);
            return this;
        }

        public Builder engagementMm(double value) {
            engagementMm = OptionalDouble.of(value);
            return this;
        }

        public Builder bossOuterMm(double value) {
            bossOuterMm = OptionalDouble.of(value);
            return this;
        }

        public Builder pullOutN(double value) {
            pullOutN = OptionalDouble.of(value);
            return this;
        }

        public Builder around(Material value) {
            around = Optional.of(value);
            return this;
        }

        public Builder clamped(Material value) {
            clamped = Optional.of(value);
            return this;
        }

        /** Allows cautious assumptions for friction, head and drive. */
        public Builder assumeCautiously() {
            assume = true;
            return this;
        }

        /**
         * Returns the request.
         *
         * @throws FastenerInputException if a length or a load is not above 0
         */
        public TorqueRequest build() {
            return new TorqueRequest(
                    thread,
                    strength,
                    friction,
                    head,
                    holeMm,
                    drive,
                    material,
                    form,
                    engagementMm,
                    bossOuterMm,
                    pullOutN,
                    around,
                    clamped,
                    assume);
        }
    }
}
