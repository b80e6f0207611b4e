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
    requires org.graalvm.js;
    requires org.graalvm.polyglot;
    requires reseat.toolkit;

    // picocli fills the fields of our commands, and of nothing else
    opens reseat.console.command to
            info.picocli;
}
