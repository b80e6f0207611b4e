package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Duration;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Way;
import reseat.text.ListText;

/**
 * How long teardown and rebuild may take, by how their times are known.
 *
 * <p>The factors are our own judgement, no source: the elements of MOST are times of a practised
 * person who makes no search and no mistake.
 *
 * @param leastMs least time to expect in milliseconds
 * @param mostMs most time to expect in milliseconds
 * @param basis milliseconds by how they are known
 */
record TimeRange(long leastMs, long mostMs, Map<Duration.Basis, Long> basis) {

    static TimeRange of(Source source) {
        Map<Duration.Basis, Long> basis = new EnumMap<>(Duration.Basis.class);
        for (CostedAct act : source.plan().acts()) {
            basis.merge(
                    basis(source.device(), act.act(), act.ms()),
                    act.ms() + act.restoreMs(),
                    Long::sum);
            basis.merge(Duration.Basis.ELEMENTS, act.setupMs(), Long::sum);
        }
        basis.merge(Duration.Basis.ELEMENTS, source.rebuild().setupMs(), Long::sum);
        double least = 0;
        double most = 0;
        for (Map.Entry<Duration.Basis, Long> each : basis.entrySet()) {
            least += each.getValue() * leastShare(each.getKey());
            most += each.getValue() * mostShare(each.getKey());
        }
        return new TimeRange(Math.round(least), Math.round(most), basis);
    }

    private static double leastShare(Duration.Basis basis) {
        return switch (basis) {
            case ELEMENTS, FAMILY -> 0.8;
            case DEVICE -> 0.85;
            case MEASURED -> 0.9;
        };
    }

    private static double mostShare(Duration.Basis basis) {
        return switch (basis) {
            case ELEMENTS -> 2;
            case FAMILY -> 1.8;
            case DEVICE -> 1.5;
            case MEASURED -> 1.2;
        };
    }

    /** A time that is not that of its kinds was stated in the device file. */
    private static Duration.Basis basis(Device device, Act act, long ms) {
        List<Kind> kinds = new ArrayList<>();
        if (act instanceof Act.Release release) {
            Joint joint = device.joint(release.joint());
            Way way = Source.way(device, release);
            kinds.add(device.kindOf(joint));
            kinds.add(device.manipulation(way.kind()));
        } else if (act instanceof Act.MoveParts parts) {
            for (String part : parts.parts()) {
                Move move = device.move(part);
                kinds.add(device.manipulation(move.kind()));
            }
        }
        return kinds.stream()
                .flatMap(kind -> kind.time().stream())
                .filter(time -> time.ms() == ms)
                .map(Duration::basis)
                .findFirst()
                .orElse(Duration.Basis.DEVICE);
    }

    /** Returns how the times are known, in words. */
    String words() {
        long all = basis.values().stream().mapToLong(Long::longValue).sum();
        List<String> words = new ArrayList<>();
        basis.forEach(
                (how, ms) -> {
                    long percent = all == 0 ? 0 : Math.round(100.0 * ms / all);
                    if (percent > 0) {
                        words.add(percent + "\u00a0% " + words(how));
                    }
                });
        return "Times: " + ListText.and(words) + ".";
    }

    private static String words(Duration.Basis basis) {
        return switch (basis) {
            case ELEMENTS -> "MOST-derived estimates";
            case FAMILY -> "defaults of the family";
            case DEVICE -> "stated in the device file";
            case MEASURED -> "measured by the shop";
        };
    }
}
