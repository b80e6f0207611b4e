/** The {@code reseat} command. Exports nothing: no plugin may know of it. */
@org.jspecify.annotations.NullMarked
module reseat.console {
    requires static org.jspecify;
    requires info.picocli;
    requires java.xml;
    // a trimmed Java may lack it; scripts in Java then do not run, and the console goes on without
    requires static jdk.jshell;
    requires org.jline.reader;
    requires org.jline.terminal;
    // looking through the engine's jars takes longer than all else at a start, so they lie apart
    // and
    // are there for the console and for processes that run scripts alone
    requires static org.graalvm.js;
    requires static org.graalvm.polyglot;
    requires reseat.files;
    requires reseat.planner;
    requires reseat.scripts;
    requires reseat.toolkit;

    // picocli fills the fields of our commands, and of nothing else
    opens reseat.console.command to
            info.picocli;
}
