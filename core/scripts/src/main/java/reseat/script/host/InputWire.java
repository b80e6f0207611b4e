package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.check.CheckInput;
import reseat.fasten.FastenerTables;
import reseat.files.DeviceFiles;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.files.PlanJson;
import reseat.files.ResolvedJson;
import reseat.job.Job;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.planner.Planner;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;
import reseat.stock.StockItem;

/**
 * Sends the input of a check to another process: devices and plan as regular files, the rest as
 * strings. The other process loads its own model from them.
 */
final class InputWire {

    private InputWire() {}

    /**
     * Writes an input.
     *
     * @param folder where to write devices and plan; the other process reads them there
     * @param rows files with further rows of fastener tables
     */
    static void write(CheckInput input, List<Path> rows, Path folder, DataOutputStream out)
            throws IOException {
        List<Device> devices = new ArrayList<>(input.variants());
        int own = devices.indexOf(input.device());
        if (own < 0) {
            own = devices.size();
            devices.add(input.device());
        }
        out.writeInt(input.variants().size());
        out.writeInt(own);
        out.writeInt(devices.size());
        for (int i = 0; i < devices.size(); i++) {
            Path file = folder.resolve("device-" + i + ".json");
            Files.writeString(file, ResolvedJson.write(devices.get(i)), UTF_8);
            Wire.text(out, file.toString());
        }
        Wire.texts(out, rows.stream().map(row -> row.toAbsolutePath().toString()).toList());
        List<String> joints = input.jointsInView().stream().map(Joint::id).toList();
        boolean all = joints.equals(List.copyOf(input.device().joints().keySet()));
        Wire.maybe(out, all ? Optional.empty() : Optional.of(joints));
        out.writeBoolean(input.plan().isPresent());
        if (input.plan().isPresent()) {
            Path file = folder.resolve("plan.json");
            Files.writeString(file, PlanJson.write(input.plan().get()), UTF_8);
            Wire.text(out, file.toString());
            out.writeLong(input.plan().get().lowerBoundMs());
            Wire.text(out, input.plan().get().ended().name());
            out.writeLong(input.plan().get().expansions());
        }
        out.writeBoolean(input.stock().isPresent());
        if (input.stock().isPresent()) {
            out.writeInt(input.stock().get().size());
            for (StockItem item : input.stock().get()) {
                stock(item, out);
            }
        }
        Wire.maybe(out, input.drives());
        out.writeBoolean(input.job().isPresent());
        if (input.job().isPresent()) {
            job(input.job().get(), out);
        }
        Wire.text(out, input.today().map(LocalDate::toString).orElse(""));
        map(input.settings(), out);
    }

    /** Reads an input and loads the files that it names. */
    static CheckInput read(DataInputStream in) throws IOException, BadInputException {
        int variants = in.readInt();
        int own = in.readInt();
        int count = in.readInt();
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Path file = Path.of(Wire.text(in));
            devices.add(DeviceFiles.read(file, Optional.empty(), List.of()).orThrow());
        }
        FastenerTables tables = FastenerTables.standard();
        for (String row : Wire.texts(in)) {
            tables = tables.withRows(Path.of(row));
        }
        Device device = devices.get(own);
        CheckInput input = CheckInput.of(device, tables).withVariants(devices.subList(0, variants));
        Optional<List<String>> joints = Wire.maybe(in);
        if (in.readBoolean()) {
            input = input.withPlan(plan(device, in));
        }
        if (joints.isPresent()) {
            input = input.withJoints(joints.get());
        }
        if (in.readBoolean()) {
            int items = in.readInt();
            List<StockItem> stock = new ArrayList<>();
            for (int i = 0; i < items; i++) {
                stock.add(stock(in));
            }
            input = input.withStock(stock);
        }
        Optional<List<String>> drives = Wire.maybe(in);
        if (drives.isPresent()) {
            input = input.withDrives(drives.get());
        }
        if (in.readBoolean()) {
            input = input.withJob(job(in));
        }
        String today = Wire.text(in);
        if (!today.isEmpty()) {
            input = input.on(LocalDate.parse(today));
        }
        for (Map.Entry<String, String> set : map(in).entrySet()) {
            input = Setting.of(set.getKey(), set.getValue()).on(input);
        }
        return input;
    }

    private static Plan plan(Device device, DataInputStream in)
            throws IOException, BadInputException {
        PlanFile file = PlanFiles.readPlan(Path.of(Wire.text(in)));
        long bound = in.readLong();
        Plan.Ended ended = Plan.Ended.valueOf(Wire.text(in));
        long expansions = in.readLong();
        PlanRequest request =
                new PlanRequest(
                        device,
                        file.goal().orElseThrow(),
                        file.start(),
                        file.rules(),
                        Effort.DEFAULT,
                        file.leaveOpen());
        Verdict verdict = Simulator.simulate(device, file.start(), file.acts());
        return new Plan(
                request,
                verdict.acts(),
                verdict.totalMs(),
                bound,
                ended,
                expansions,
                Planner::rebuild);
    }

    private static void stock(StockItem item, DataOutputStream out) throws IOException {
        Wire.text(out, item.id());
        Wire.text(out, item.kind().name());
        Wire.text(out, item.name());
        Wire.texts(out, item.serves());
        Wire.text(out, item.onHand().toString());
        Wire.text(out, item.reserved().toString());
        Wire.text(out, item.unit());
        Wire.maybe(out, item.lot().map(List::of));
        Wire.maybe(out, item.expires().map(day -> List.of(day.toString())));
        Wire.maybe(out, item.place().map(List::of));
    }

    private static StockItem stock(DataInputStream in) throws IOException {
        return new StockItem(
                Wire.text(in),
                StockItem.Kind.valueOf(Wire.text(in)),
                Wire.text(in),
                Wire.texts(in),
                new BigDecimal(Wire.text(in)),
                new BigDecimal(Wire.text(in)),
                Wire.text(in),
                Wire.maybe(in).map(one -> one.get(0)),
                Wire.maybe(in).map(one -> LocalDate.parse(one.get(0))),
                Wire.maybe(in).map(one -> one.get(0)));
    }

    private static void job(Job job, DataOutputStream out) throws IOException {
        Wire.text(out, job.id());
        Wire.text(out, job.unit());
        Wire.text(out, job.device());
        Wire.maybe(out, job.variant().map(List::of));
        Map<String, String> cycles = new LinkedHashMap<>();
        job.cycles().forEach((joint, made) -> cycles.put(joint, String.valueOf(made)));
        map(cycles, out);
    }

    private static Job job(DataInputStream in) throws IOException {
        String id = Wire.text(in);
        String unit = Wire.text(in);
        String device = Wire.text(in);
        Optional<String> variant = Wire.maybe(in).map(one -> one.get(0));
        Map<String, Integer> cycles = new LinkedHashMap<>();
        map(in).forEach((joint, made) -> cycles.put(joint, Integer.valueOf(made)));
        return new Job(id, unit, device, variant, cycles);
    }

    private static void map(Map<String, String> map, DataOutputStream out) throws IOException {
        Wire.texts(out, List.copyOf(map.keySet()));
        Wire.texts(out, List.copyOf(map.values()));
    }

    private static Map<String, String> map(DataInputStream in) throws IOException {
        List<String> keys = Wire.texts(in);
        List<String> values = Wire.texts(in);
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            map.put(keys.get(i), values.get(i));
        }
        return map;
    }
}
