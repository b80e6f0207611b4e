/** Test support for authors of plugins and scripts. */
@org.jspecify.annotations.NullMarked
module reseat.testkit {
    // transitive: @Nullable shows in exported signatures
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;
    requires reseat.files;
    requires reseat.planner;

    exports reseat.testkit;
}
