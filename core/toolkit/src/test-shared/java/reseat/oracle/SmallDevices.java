package reseat.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import reseat.model.Device;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;

/** Small random devices for other tests. */
public final class SmallDevices {

    private SmallDevices() {}

    /**
     * Where a random walk stands.
     *
     * @param request the request of the seed, from here
     * @param tool what is in hand
     * @param posture how the device lies
     * @param restMs what the rest costs at least by exhaustive search, prepare acts apart, in
     *     milliseconds; empty if there is no way
     */
    public record Stand(PlanRequest request, String tool, String posture, OptionalLong restMs) {}

    public static Device of(long seed) {
        return RandomDevices.of(seed).device();
    }

    /** Returns the first seed that tests of small devices look at. */
    public static long firstSeed() {
        return Seeds.first();
    }

    /** Returns how many devices to look at: so many, unless {@code -Dreseat.devices} says less. */
    public static int most(int devices) {
        return Math.min(devices, Seeds.devices(devices));
    }

    /** Returns the start of the case of a seed. */
    public static Stand start(long seed) {
        Case of = RandomDevices.of(seed);
        return stand(of, of.device().hand(), of.device().usualPosture());
    }

    /** Returns the start and what a number of random legal acts lead to. */
    public static List<Stand> walk(long seed, int acts) {
        Case of = RandomDevices.of(seed);
        Masks masks = new Masks(of.device());
        Random random = new Random(seed);
        List<Stand> stands = new ArrayList<>(List.of(start(seed)));
        long at = masks.encode(of.start());
        for (int i = 0; i < acts; i++) {
            List<Long> next = masks.next(at, set -> {});
            if (next.isEmpty()) {
                break;
            }
            at = next.get(random.nextInt(next.size()));
            State places = masks.decode(at);
            State state =
                    new State(places.released(), places.places(), of.start().prepared());
            stands.add(
                    stand(
                            of.with(state),
                            masks.toolIds.get(Masks.tool(at)),
                            masks.postureIds.get(Masks.posture(at))));
        }
        return stands;
    }

    private static Stand stand(Case of, String tool, String posture) {
        State prepared =
                new State(
                        of.start().released(),
                        of.start().places(),
                        of.device().prepares().keySet());
        OptionalLong rest =
                Oracle.solve(of.with(prepared), tool, posture)
                        .map(best -> OptionalLong.of(best.ms()))
                        .orElse(OptionalLong.empty());
        PlanRequest request =
                new PlanRequest(of.device(), of.goal(), of.start(), of.rules(), Effort.DEFAULT);
        return new Stand(request, tool, posture, rest);
    }
}
