package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;
import reseat.script.host.ScriptOutcome.Status;

/**
 * Scripts that mean harm. All of them run after one another in one run, with a well-behaved script
 * after each, which must find what it always finds.
 */
class HostileScriptsTest {

    /** Small, so that the whole suite takes a minute; what is bounded is bounded all the same. */
    private static final ScriptLimits TIGHT = new ScriptLimits(2_000_000, 4, 128, 16 * 1024, 100);

    private static final String GOOD =
            """
            function run(input) {
              return input.facts().screws()
                .filter(screw => screw.lengthMm() > 5)
                .map(screw => input.finding(screw.pointer()).says(`${screw.joint()} is long`, 'Look'));
            }
            """;

    /** A script, and what its problem says: one of these, separated by {@code |}. */
    private record Case(String name, String body, String told) {

        boolean isToldBy(String problem) {
            return Arrays.stream(told.split("\\|", -1)).anyMatch(problem::contains);
        }
    }

    private static final List<Case> CASES =
            List.of(
                    new Case("endless loop", "while (true) {}", "statements"),
                    new Case(
                            "endless loop that catches everything",
                            "for (;;) { try { for (;;) {} } catch (e) {} finally { for (;;) {} } }",
                            "statements"),
                    new Case(
                            "endless recursion",
                            "const f = () => f() + 1; f(); return [];",
                            "endless recursion"),
                    new Case(
                            "endless mutual recursion through a getter",
                            "const o = { get a() { return this.a; } }; return o.a;",
                            "endless recursion"),
                    new Case(
                            "heap bomb",
                            "const all = []; for (;;) { all.push(new Array(1e5).fill(all.length)); }",
                            ""),
                    new Case(
                            "heap bomb of text",
                            "const all = []; let s = 'x'.repeat(1e6);"
                                    + " for (;;) { all.push(('y' + s + all.length).split('').reverse()); }",
                            // on a busy machine the time may run out first
                            "memory|stopped after"),
                    new Case(
                            "buffer bomb",
                            "const all = []; for (;;) { all.push(new Uint8Array(1e7)); }",
                            "memory"),
                    new Case("one huge buffer", "return new ArrayBuffer(2 ** 40);", "RangeError"),
                    new Case(
                            "regex bomb",
                            "return /^(?=(a+)+\\1$)b?((a|a)+)+c\\2$/.test('a'.repeat(40));",
                            "stopped after 4 s"),
                    new Case("bignum bomb", "let n = 3n; for (;;) { n = n * n; }", ""),
                    new Case("output flood", "for (;;) console.log('x'.repeat(1000));", ""),
                    new Case(
                            "output flood that ends",
                            "for (let i = 0; i < 1000; i++) print('x'.repeat(1000)); return [];",
                            "printed more than 16 KiB"),
                    new Case(
                            "prototype pollution",
                            "Object.prototype.pointer = () => '/parts/none';"
                                    + " Array.prototype.filter = () => { throw 'mine'; };"
                                    + " Array.prototype.map = () => [];"
                                    + " Function.prototype.call = () => 1;"
                                    + " return input.facts().screws().filter(x => x);",
                            "mine"),
                    new Case(
                            "pollution of the objects of the API",
                            "Object.setPrototypeOf(input.facts().screws()[0], { lengthMm: () => 0 }); return [];",
                            "TypeError"),
                    new Case(
                            "a property on an object of the API",
                            "input.facts = () => null; return [];",
                            "change"),
                    new Case(
                            "reflection by class",
                            "return input.getClass().forName('java.lang.Runtime');",
                            "CheckInput has no getClass"),
                    new Case(
                            "reflection by Java.type",
                            "return Java.type('java.lang.System').exit(7);",
                            "Java is not defined"),
                    new Case(
                            "reflection by constructor",
                            "return input.constructor.constructor('return 1')();",
                            "disabled"),
                    new Case("code from text", "return (0, eval)('input');", "disabled"),
                    new Case(
                            "polyglot",
                            "return Polyglot.import('java');",
                            "Polyglot is not defined"),
                    new Case("dynamic import", "return import('fs');", "not allowed"),
                    new Case(
                            "dynamic import of a file",
                            "import('/etc/passwd').then(m => { throw m; }); return [];",
                            ""),
                    new Case("require", "return require('fs');", "require is not defined"),
                    new Case("load", "return load('/etc/passwd');", "load is not defined"),
                    new Case(
                            "load from the network",
                            "return fetch('http://127.0.0.1:1/');",
                            "fetch is not defined"),
                    new Case(
                            "socket",
                            "return new WebSocket('ws://127.0.0.1:1/');",
                            "WebSocket is not defined"),
                    new Case("environment", "return process.env;", "process is not defined"),
                    new Case("clock", "return Date.now();", "Date is not defined"),
                    new Case(
                            "clock by the back door",
                            "return input.device().setup().constructor.now();",
                            "TypeError"),
                    new Case("thread", "return new Worker('x');", "Worker is not defined"),
                    new Case(
                            "mutation of the model",
                            "input.device().parts().clear(); return [];",
                            "change"),
                    new Case(
                            "mutation of a list of the model",
                            "input.jointsInView().pop(); return [];",
                            "change"),
                    new Case(
                            "promise that never settles",
                            "return new Promise(() => {});",
                            "returned a promise"),
                    new Case(
                            "endless promises",
                            "const again = () => Promise.resolve().then(again); again(); return [];",
                            "stopped after"),
                    new Case(
                            "throwing getters",
                            "return [{ get check() { throw new Error('caught?'); } }];",
                            "not a finding"),
                    new Case(
                            "a list with throwing getters",
                            "const list = []; Object.defineProperty(list, 0, { get() { throw new Error('gotten'); } });"
                                    + " return list;",
                            "gotten"),
                    new Case(
                            "a list that is a proxy",
                            "return new Proxy([], { get() { for (;;) {} } });",
                            "no list"),
                    new Case(
                            "an error that cannot be told",
                            "throw { get message() { for (;;) {} }, toString() { for (;;) {} } };",
                            ""),
                    new Case(
                            "an error whose name throws",
                            "const e = new Error('x'); Object.defineProperty(e, 'name', { get() { throw e; } }); throw e;",
                            ""),
                    new Case("exit", "quit(3);", "quit is not defined"),
                    new Case("exit by process", "process.exit(3);", "process is not defined"),
                    new Case(
                            "something that is no finding",
                            "return [{ severity: 'ERROR', title: 'false' }];",
                            "not a finding"),
                    new Case("nothing", "", "no list of findings"),
                    new Case(
                            "too many findings",
                            "const f = input.finding('/parts/cup').says('m', 'r'); return new Array(101).fill(f);",
                            "the limit is 100"),
                    new Case(
                            "a list without end",
                            "return { length: 2 ** 50, 0: 1 };",
                            "no list of findings"),
                    new Case(
                            "a finding about nothing",
                            "return [input.finding('/parts/none').says('m', 'r')];",
                            "which the device does not have"),
                    new Case(
                            "a finding that writes to the terminal",
                            "return [input.finding('/parts/cup').says('\\u001b[2J', 'r')];",
                            "control characters"),
                    new Case(
                            "a finding without end",
                            "return [input.finding('/parts/cup').says('m'.repeat(1e5), 'r')];",
                            "at most 2000"),
                    new Case("no JavaScript", "this is none", "not valid JavaScript"));

    @TempDir Path folder;

    private ScriptFile script(String id, String text) {
        try {
            Path file = folder.resolve(id + ".js");
            Files.writeString(
                    file,
                    "/* reseat-script\nid: "
                            + id
                            + "\ntitle: T\nfinds: F.\nmatters: M.\nfrom: a test\n*/\n"
                            + text,
                    UTF_8);
            return ScriptFile.read(file);
        } catch (IOException | BadInputException e) {
            throw new AssertionError(e);
        }
    }

    private static CheckInput tansy() throws BadInputException {
        return CheckInput.of(
                DeviceFiles.read(
                                Path.of("../../samples/tansy/tansy.yaml"),
                                Optional.empty(),
                                List.of())
                        .orThrow());
    }

    @TestFactory
    Stream<DynamicTest> isContained() throws BadInputException {
        List<ScriptFile> scripts = new ArrayList<>();
        Map<Case, ScriptFile> hostile = new LinkedHashMap<>();
        scripts.add(script("good", GOOD));
        for (Case each : CASES) {
            ScriptFile bad =
                    script(
                            "bad-" + hostile.size(),
                            "function run(input) {\n" + each.body + "\n}\n");
            hostile.put(each, bad);
            scripts.add(bad);
            scripts.add(script("good-" + hostile.size(), GOOD));
        }
        ScriptHost.Ran ran = new ScriptHost(TIGHT, Approvals.none()).run(scripts, tansy());
        List<DynamicTest> tests = new ArrayList<>();
        for (int i = 0; i < CASES.size(); i++) {
            Case each = CASES.get(i);
            ScriptOutcome bad = ran.outcomes().get(2 * i + 1);
            ScriptOutcome after = ran.outcomes().get(2 * i + 2);
            tests.add(
                    dynamicTest(
                            each.name,
                            () -> {
                                assertEquals(Status.FAILED, bad.status(), bad.toString());
                                assertEquals(List.of(), bad.findings());
                                assertTrue(each.isToldBy(bad.problem()), bad.problem());
                                assertTrue(bad.problem().length() < 400, bad.problem());
                                assertTrue(
                                        bad.printed().length() <= TIGHT.printed(), bad.printed());
                                assertEquals(Status.RAN, after.status(), after.problem());
                                assertEquals(3, after.findings().size());
                            }));
        }
        tests.add(
                dynamicTest(
                        "the next run is unharmed",
                        () -> {
                            ScriptHost.Ran next =
                                    new ScriptHost(TIGHT, Approvals.none())
                                            .run(List.of(scripts.get(0)), tansy());
                            assertEquals(List.of(), next.problems());
                            assertEquals(3, next.findings().size());
                            assertEquals(
                                    ran.outcomes().get(0).findings(),
                                    next.outcomes().get(0).findings());
                        }));
        return tests.stream();
    }
}
