package reseat.console.house;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.function.BiPredicate;
import reseat.console.house.House.Area;

/** Calls into Java that would make output differ from run to run or from place to place. */
final class ForbiddenCalls {

    // An entry is "owner.member(parameter types)" with full names; one without a closing bracket is
    // the start of that, one that starts with a dot its end.

    private static final List<String> STREAMS =
            List.of("java.lang.System.out", "java.lang.System.err", ".printStackTrace()");

    private static final List<String> EXIT =
            List.of("java.lang.System.exit(", "java.lang.Runtime.exit(", "java.lang.Runtime.halt(");

    private static final List<String> DICE =
            List.of(
                    "java.util.Random.<init>()",
                    "java.util.SplittableRandom.<init>()",
                    "java.util.concurrent.ThreadLocalRandom.current()",
                    "java.util.random.RandomGenerator.getDefault()",
                    "java.util.random.RandomGenerator.of(",
                    "java.util.Collections.shuffle(java.util.List)",
                    "java.lang.Math.random()",
                    "java.util.UUID.randomUUID()");

    private static final List<String> LOCALE =
            List.of(
                    "java.lang.String.format(java.lang.String,",
                    "java.lang.String.formatted(",
                    "java.lang.String.toLowerCase()",
                    "java.lang.String.toUpperCase()",
                    "java.io.PrintWriter.printf(java.lang.String,",
                    "java.io.PrintWriter.format(java.lang.String,",
                    "java.io.PrintStream.printf(java.lang.String,",
                    "java.io.PrintStream.format(java.lang.String,",
                    "java.util.Formatter.<init>()",
                    "java.util.Formatter.<init>(java.lang.Appendable)",
                    "java.util.Locale.getDefault(",
                    "java.text.Collator.getInstance()",
                    "java.text.DecimalFormat.<init>(java.lang.String)",
                    "java.text.DecimalFormat.<init>()",
                    "java.text.NumberFormat.getInstance()",
                    "java.text.NumberFormat.getNumberInstance()",
                    "java.text.NumberFormat.getIntegerInstance()",
                    "java.text.NumberFormat.getPercentInstance()",
                    "java.text.MessageFormat.format(",
                    "java.text.MessageFormat.<init>(java.lang.String)",
                    "java.text.SimpleDateFormat.<init>(java.lang.String)",
                    "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)",
                    "java.time.format.DateTimeFormatter.ofLocalized");

    private static final List<String> CHARSET =
            List.of(
                    "java.lang.String.<init>([B)",
                    "java.lang.String.<init>([B, int, int)",
                    "java.lang.String.getBytes()",
                    "java.nio.charset.Charset.defaultCharset()",
                    "java.io.InputStreamReader.<init>(java.io.InputStream)",
                    "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
                    "java.io.FileReader.<init>(java.lang.String)",
                    "java.io.FileReader.<init>(java.io.File)",
                    "java.io.FileWriter.<init>(java.lang.String)",
                    "java.io.FileWriter.<init>(java.io.File)",
                    "java.io.PrintStream.<init>(java.io.OutputStream)",
                    "java.io.PrintStream.<init>(java.io.OutputStream, boolean)",
                    "java.io.PrintWriter.<init>(java.io.OutputStream)",
                    "java.io.PrintWriter.<init>(java.io.OutputStream, boolean)",
                    "java.io.PrintWriter.<init>(java.lang.String)",
                    "java.io.PrintWriter.<init>(java.io.File)",
                    "java.io.ByteArrayOutputStream.toString()",
                    "java.util.Scanner.<init>(java.io.InputStream)",
                    "java.util.Scanner.<init>(java.nio.file.Path)",
                    "java.util.Scanner.<init>(java.io.File)");

    private static final List<String> CLOCK =
            List.of(
                    "java.lang.System.currentTimeMillis()",
                    "java.time.Clock.system",
                    "java.time.Instant.now()",
                    "java.time.LocalDate.now()",
                    "java.time.LocalDateTime.now()",
                    "java.time.OffsetDateTime.now()",
                    "java.time.ZonedDateTime.now()",
                    "java.util.Date.<init>()");

    private static final List<String> LOADER =
            List.of(
                    "java.lang.Thread.getContextClassLoader()",
                    "java.util.ServiceLoader.load(java.lang.Class)");

    private ForbiddenCalls() {}

    static List<HouseRule> of(House house) {
        return List.of(
                rule(
                        house,
                        "only the console talks to the standard streams",
                        "the toolkit runs inside other programs, whose output it must not spoil;"
                                + " hand back text or findings",
                        STREAMS,
                        // a worker process talks to its parent through them
                        (area, type) ->
                                !area.name().equals("console")
                                        && !(area.name().equals("script") && area.inside())),
                rule(
                        house,
                        "only Main ends the process",
                        "a command hands back its exit code, so that it can be tested and embedded",
                        EXIT,
                        // the worker is nobody's command: it is started to be ended
                        (area, type) ->
                                !type.getName().equals(house.root() + ".console.Main")
                                        && !type.getName()
                                                .equals(house.root() + ".script.host.Worker")),
                rule(
                        house,
                        "no dice without a seed",
                        "the same input must give the same output; pass a seed or a generator in",
                        DICE,
                        (area, type) -> true),
                rule(
                        house,
                        "no default locale",
                        "a torque printed as 0,06 in one shop and 0.06 in the next is a mistake"
                                + " waiting; give Locale.ROOT",
                        LOCALE,
                        (area, type) -> true),
                rule(
                        house,
                        "no default charset",
                        "on Java 17 it depends on the machine, and files travel; give UTF_8",
                        CHARSET,
                        (area, type) -> true),
                rule(
                        house,
                        "the toolkit asks no wall clock",
                        "output must not depend on the day; pass a java.time.Clock in"
                                + " (System.nanoTime is fine for limits)",
                        CLOCK,
                        (area, type) -> area.isTimeless()),
                rule(
                        house,
                        "no class loader by thread",
                        "with plugins in layers the thread's loader is the wrong one; name the"
                                + " layer or the loader",
                        LOADER,
                        (area, type) -> true));
    }

    private static HouseRule rule(
            House house,
            String name,
            String why,
            List<String> forbidden,
            BiPredicate<Area, JavaClass> applies) {
        return HouseRule.of(
                name,
                why,
                (type, breach) -> {
                    if (!house.owns(type) || !applies.test(house.areaOf(type), type)) {
                        return;
                    }
                    for (JavaAccess<?> access : type.getAccessesFromSelf()) {
                        String target = access.getTarget().getFullName();
                        if (forbidden.stream().anyMatch(start -> matches(target, start))) {
                            breach.accept(access.getDescription());
                        }
                    }
                });
    }

    private static boolean matches(String target, String start) {
        if (start.startsWith(".")) {
            return target.endsWith(start);
        }
        return start.endsWith(")") ? target.equals(start) : target.startsWith(start);
    }
}
