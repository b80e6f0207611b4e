package reseat.console.prompt;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import reseat.check.CheckInfo;
import reseat.fasten.FastenerTable;
import reseat.model.Device;
import reseat.script.Bench;

/** Completions in quotes: files, ids of parts and joints, checks, tables. */
final class TextOffers {

    private static final Set<String> FILES = Set.of("device", "devices", "of", "readString");
    private static final int MOST = 400;

    private final Bench bench;
    private final Path folder;

    TextOffers(Bench bench, Path folder) {
        this.bench = bench;
        this.folder = folder;
    }

    List<Offer> of(Spot spot) {
        List<Offer> offers = new ArrayList<>();
        if (spot.call().equals("table")) {
            Arrays.stream(FastenerTable.values())
                    .forEach(t -> add(offers, spot, t.title(), "", "tables"));
        } else if ((FILES.contains(spot.call()) && spot.argument() == 0)
                || spot.word().contains("/")) {
            return files(spot);
        } else {
            if (spot.call().equals("check") || spot.call().equals("help")) {
                for (CheckInfo check : bench.checks()) {
                    add(offers, spot, check.id(), check.title(), "checks");
                }
            }
            if (!spot.call().equals("check")) {
                ids(spot, offers);
            }
        }
        return offers;
    }

    private void ids(Spot spot, Collection<Offer> offers) {
        Map<String, String[]> known = new TreeMap<>();
        List<Device> devices = bench.devicesRead();
        for (int i = devices.size() - 1; i >= 0; i--) {
            Device device = devices.get(i);
            device.parts()
                    .forEach((id, p) -> known.putIfAbsent(id, new String[] {p.name(), "parts"}));
            device.joints()
                    .forEach((id, j) -> known.putIfAbsent(id, new String[] {j.name(), "joints"}));
        }
        known.forEach(
                (id, told) -> add(offers, spot, id, told[0].equals(id) ? "" : told[0], told[1]));
    }

    private static void add(
            Collection<Offer> offers, Spot spot, String text, String says, String group) {
        if (text.startsWith(spot.word()) && offers.size() < MOST) {
            offers.add(new Offer(spot.start(), text, says, true, group));
        }
    }

    /** Returns files and folders that begin with what is typed, whole paths as typed. */
    List<Offer> files(Spot spot) {
        int slash = spot.word().lastIndexOf('/');
        String lead = spot.word().substring(0, slash + 1);
        String start = spot.word().substring(slash + 1);
        Path in = lead.isEmpty() ? folder : folder.resolve(lead);
        List<Offer> offers = new ArrayList<>();
        try (DirectoryStream<Path> files =
                Files.newDirectoryStream(in.toString().isEmpty() ? Path.of(".") : in)) {
            for (Path file : files) {
                String name = String.valueOf(file.getFileName());
                if (name.startsWith(start) && (!name.startsWith(".") || !start.isEmpty())) {
                    String more = Files.isDirectory(file) ? "/" : "";
                    offers.add(new Offer(spot.start(), lead + name + more, "", true, "files"));
                }
            }
        } catch (IOException | RuntimeException e) {
            return List.of();
        }
        offers.sort(java.util.Comparator.comparing(Offer::text));
        return offers;
    }
}
