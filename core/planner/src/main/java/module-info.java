/** The planner and the ordering solver, behind the one door that hands out judged plans. */
@org.jspecify.annotations.NullMarked
module reseat.planner {
    requires static transitive org.jspecify;
    requires transitive reseat.toolkit;

    exports reseat.planner;
}
