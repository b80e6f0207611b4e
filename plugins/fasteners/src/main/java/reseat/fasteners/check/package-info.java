/** The checks of screws and of cuts, one class each or a few that share their facts. */
package reseat.fasteners.check;
