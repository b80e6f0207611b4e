/** The planner and the ordering solver, behind the interface that returns verified plans. */
@org.jspecify.annotations.NullMarked
module reseat.planner {
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;

    exports reseat.graph;
    exports reseat.planner;
}
