/** The checks of hazards, power, covers, wear and tests. */
package reseat.devicechecks.check;
