/** Contributes checks of hazards, power, covers, wear and tests. */
package reseat.devicechecks;
