/** The {@code reseat} command. Exports nothing: plugins must not depend on it. */
@org.jspecify.annotations.NullMarked
module reseat.console {
    requires static org.jspecify;
    requires info.picocli;
    requires java.xml;
    // a trimmed JDK may lack it; then scripts in Java do not run, and the console has no Java
    requires static jdk.jshell;
    requires org.jline.reader;
    requires org.jline.terminal;
    // scanning the engine's jars would dominate the start-up time, so they are kept separately
    // and added only for the console and for processes that run scripts
    requires static org.graalvm.js;
    requires static org.graalvm.polyglot;
    requires reseat.files;
    requires reseat.planner;
    requires reseat.scripts;
    requires reseat.toolkit;

    // picocli sets the fields of our commands only
    opens reseat.console.command to
            info.picocli;
}
