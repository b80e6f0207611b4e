/**
 * Handbook knowledge about small screws and about cutting adhesive.
 *
 * <p>Start at {@link reseat.fasten.FastenerTables#standard()}. Torques come from {@link
 * reseat.fasten.TorqueAdvisor}, the fit of a screw in a seat from {@link reseat.fasten.StackUp},
 * confusion and trays from {@link reseat.fasten.LookAlikes} and {@link reseat.fasten.TrayPlan},
 * depths of a cut from {@link reseat.fasten.CutPlan}, the order of tightening from {@link
 * reseat.fasten.TighteningPattern}. The package knows the model and nothing else of Reseat.
 *
 * <p>Units: millimetres, square millimetres, newtons, newton metres, newtons per square millimetre;
 * the unit is in the name of every bare number. Everything is immutable, holds its collections in a
 * defined order, and safe to share between threads. Unusable user input is reported by {@link
 * reseat.fasten.FastenerInputException}, which lists the known names.
 */
@NullMarked
package reseat.fasten;

import org.jspecify.annotations.NullMarked;
