/**
 * The script API, the hosts that run JavaScript and Java, and the worker processes that shared
 * scripts run in.
 */
@org.jspecify.annotations.NullMarked
@SuppressWarnings("module") // reseat.console is compiled after this one
module reseat.scripts {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;
    requires transitive reseat.files;
    requires transitive reseat.planner;
    // a trimmed JDK may lack it; then scripts in Java do not run
    requires static jdk.jshell;
    // scanning the engine's jars would dominate the start-up time, so they are kept separately
    // and added only for the console and for processes that run scripts
    requires static org.graalvm.js;
    requires static org.graalvm.polyglot;

    exports reseat.script;
    exports reseat.script.host to
            reseat.console;
}
