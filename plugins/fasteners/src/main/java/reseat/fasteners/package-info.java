/** Commands about fasteners. */
package reseat.fasteners;
