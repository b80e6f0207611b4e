/**
 * The script API, the hosts that run JavaScript and Java, and the worker processes that scripts of
 * others run in.
 */
@org.jspecify.annotations.NullMarked
@SuppressWarnings("module") // reseat.console is compiled after this one
module reseat.scripts {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;
    requires transitive reseat.files;
    requires reseat.planner;
    // a trimmed Java may lack it; scripts in Java then do not run
    requires static jdk.jshell;
    // looking through the engine's jars takes longer than all else at a start, so they lie apart
    // and are there only for the console and for processes that run scripts
    requires static org.graalvm.js;
    requires static org.graalvm.polyglot;

    exports reseat.script;
    exports reseat.script.host to
            reseat.console;
}
