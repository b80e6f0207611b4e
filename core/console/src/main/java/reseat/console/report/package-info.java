/** What a run of checks found, written for people and for other programs. */
package reseat.console.report;
