package reseat.check;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import reseat.fasten.FastenerTables;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Ordered;
import reseat.plan.Plan;
import reseat.query.DeviceFacts;
import reseat.query.PlanFacts;
import reseat.stock.StockItem;

/**
 * The input of a check. Immutable; the {@code with} methods return a modified copy.
 *
 * <p>While a check runs, it has its own view of the input: {@link #text}, {@link #number} and
 * {@link #finding} know the check's parameters and severity.
 */
public final class CheckInput {

    private final Device device;
    private final Given given;
    private final @Nullable CheckInfo check;

    /**
     * Optional facts besides the device; null if unknown. Never modified once shared, except for
     * cached results.
     */
    private static final class Given {
        private FastenerTables tables;
        private List<Device> variants;
        private @Nullable List<String> joints;
        private @Nullable Plan plan;
        private @Nullable List<StockItem> stock;
        private @Nullable List<String> drives;
        private @Nullable Job job;
        private @Nullable LocalDate today;
        private Map<String, String> settings = Map.of();
        private @Nullable DeviceFacts facts;
        private @Nullable PlanFacts planFacts;
        private final Map<Class<?>, Object> computed = new ConcurrentHashMap<>();

        Given(FastenerTables tables, List<Device> variants) {
            this.tables = tables;
            this.variants = variants;
        }

        Given(Given other) {
            tables = other.tables;
            variants = other.variants;
            joints = other.joints;
            plan = other.plan;
            stock = other.stock;
            drives = other.drives;
            job = other.job;
            today = other.today;
            settings = other.settings;
        }

        /** Results already computed, shared by all checks that run on the same input. */
        synchronized DeviceFacts facts(Device device) {
            DeviceFacts known = facts;
            if (known == null) {
                known = DeviceFacts.of(device, tables).withVariants(variants);
                known = job == null ? known : known.of(job);
                facts = known;
            }
            return known;
        }

        synchronized PlanFacts planFacts(Plan of) {
            PlanFacts known = planFacts;
            if (known == null) {
                known = PlanFacts.of(of, tables);
                known = stock == null ? known : known.withStock(stock);
                known = drives == null ? known : known.withDrives(drives);
                known = today == null ? known : known.on(today);
                known = job == null ? known : known.of(job);
                planFacts = known;
            }
            return known;
        }
    }

    private CheckInput(Device device, Given given, @Nullable CheckInfo check) {
        this.device = device;
        this.given = given;
        this.check = check;
    }

    /** Returns the input of a device alone, with the standard tables. */
    public static CheckInput of(Device device) {
        return of(device, FastenerTables.standard());
    }

    /** Returns the input of a device alone. */
    public static CheckInput of(Device device, FastenerTables tables) {
        return new CheckInput(device, new Given(tables, List.of(device)), null);
    }

    /** Returns the device. */
    public Device device() {
        return device;
    }

    /** Returns the fastener tables to look up in. */
    public FastenerTables tables() {
        return given.tables;
    }

    /** Returns the base device and all its variants; the device alone if they were not supplied. */
    public List<Device> variants() {
        return given.variants;
    }

    /** Returns the plan to examine. */
    public Optional<Plan> plan() {
        return Optional.ofNullable(given.plan);
    }

    /** Returns what the shop has in stock. */
    public Optional<List<StockItem>> stock() {
        return Optional.ofNullable(given.stock);
    }

    /** Returns the drives that the shop has drivers for, such as T5. */
    public Optional<List<String>> drives() {
        return Optional.ofNullable(given.drives);
    }

    /** Returns the job that the plan is carried out for. */
    public Optional<Job> job() {
        return Optional.ofNullable(given.job);
    }

    /** Returns the day on which expiry is judged; empty if it is not judged. */
    public Optional<LocalDate> today() {
        return Optional.ofNullable(given.today);
    }

    /**
     * Returns bulk queries on the device. Results are cached for all checks that run on this input.
     */
    public DeviceFacts facts() {
        return given.facts(device);
    }

    /**
     * Returns bulk queries on the plan, for the stock, drives, job and day of this input; empty if
     * there is no plan.
     */
    public Optional<PlanFacts> planFacts() {
        return plan().map(given::planFacts);
    }

    /**
     * Returns a result that several checks derive from this input. It is cached with the input, for
     * all checks that run on it.
     *
     * @param type class of the result, which is also the cache key: use a class of your own
     * @param computation computes the result from the input, which is then not bound to any check;
     *     if two threads call at the same time, both may compute and one result is kept. Must not
     *     return null
     */
    public <T> T computed(Class<T> type, Function<CheckInput, T> computation) {
        Object known = given.computed.get(type);
        if (known == null) {
            T made = computation.apply(new CheckInput(device, given, null));
            Object before = given.computed.putIfAbsent(type, made);
            known = before == null ? made : before;
        }
        return type.cast(known);
    }

    /** Returns the parameter values, by {@code check-id.parameter}. */
    public Map<String, String> settings() {
        return given.settings;
    }

    /** Returns the joints to check, in order: those that are released, else all. */
    public List<Joint> jointsInView() {
        return given.joints == null
                ? List.copyOf(device.joints().values())
                : given.joints.stream().distinct().map(device::joint).toList();
    }

    /**
     * Returns whether another input holds the same facts, whichever check it is bound to. Fast and
     * conservative: inputs created separately count as different.
     */
    public boolean isOfSameFacts(CheckInput other) {
        return device == other.device && given == other.given;
    }

    /** Returns whether a requirement of checks is met. */
    public boolean has(CheckInfo.Need need) {
        return switch (need) {
            case PLAN -> given.plan != null;
            case STOCK -> given.stock != null;
            case DRIVES -> given.drives != null;
            case JOB -> given.job != null;
            case TODAY -> given.today != null;
        };
    }

    /**
     * Returns the value of a parameter of the running check.
     *
     * @throws IllegalArgumentException if the check has no such parameter
     */
    public String text(String parameter) {
        CheckInfo info = info();
        CheckInfo.Parameter known = info.parameter(parameter);
        return given.settings.getOrDefault(info.id() + "." + parameter, known.usual());
    }

    /**
     * Returns the value of a parameter as a number, in the parameter's unit.
     *
     * @throws IllegalArgumentException if the check has no such parameter, or what was set is no
     *     number
     */
    public double number(String parameter) {
        return info().parameter(parameter).number(text(parameter));
    }

    /**
     * Begins a finding of the running check.
     *
     * @param pointer what it is about, as a JSON Pointer into the device file, such as {@code
     *     /joints/lid-screw.a}
     */
    public Finding.Draft finding(String pointer) {
        return new Finding.Draft(info(), device.origin(pointer), pointer);
    }

    private CheckInfo info() {
        return Objects.requireNonNull(check, "no check runs on this input; see forCheck");
    }

    /** Returns this input bound to a check. */
    public CheckInput forCheck(CheckInfo info) {
        return new CheckInput(device, given, info);
    }

    /** Returns this input limited to these released joints, in order. */
    public CheckInput withJoints(List<String> ids) {
        ids.forEach(device::joint);
        return with(more -> more.joints = List.copyOf(ids));
    }

    /** Returns this input with the other variants of the device. */
    public CheckInput withVariants(List<Device> all) {
        return with(more -> more.variants = List.copyOf(all));
    }

    /**
     * Returns this input with a plan; the joints to check are those that it releases.
     *
     * @throws IllegalArgumentException if the plan is for another device
     */
    public CheckInput withPlan(Plan plan) {
        if (!plan.request().device().id().equals(device.id())) {
            throw new IllegalArgumentException(
                    "the plan is for " + plan.request().device() + ", not for " + device);
        }
        return with(
                more -> {
                    more.plan = plan;
                    more.joints = plan.releasedJoints();
                });
    }

    /** Returns this input with what the shop has in stock. */
    public CheckInput withStock(List<StockItem> items) {
        return with(more -> more.stock = List.copyOf(items));
    }

    /** Returns this input for a shop that has drivers for these drives. */
    public CheckInput withDrives(List<String> ids) {
        return with(more -> more.drives = List.copyOf(ids));
    }

    /** Returns this input for a job. */
    public CheckInput withJob(Job job) {
        return with(more -> more.job = job);
    }

    /** Returns this input with the day on which expiry is judged. */
    public CheckInput on(LocalDate day) {
        return with(more -> more.today = day);
    }

    /** Returns this input with a parameter of a check set. */
    public CheckInput set(String checkId, String parameter, String value) {
        Map<String, String> settings = new LinkedHashMap<>(given.settings);
        settings.put(checkId + "." + parameter, value);
        return with(more -> more.settings = Ordered.copyOf(settings));
    }

    private CheckInput with(Consumer<Given> change) {
        Given more = new Given(given);
        change.accept(more);
        return new CheckInput(device, more, check);
    }
}
