/** Reports on a run of checks, for people and for programs. */
package reseat.console.report;
