/**
 * The repairability index of the European Union for smartphones and slate tablets, as Delegated
 * Regulation (EU) 2023/1669 computes it in its consolidated state of 10 May 2026.
 *
 * <p>What this computes from a device file is an estimate: the maker declares the index from the
 * published repair information, and market surveillance verifies it.
 */
@NullMarked
package reseat.euindex;

import org.jspecify.annotations.NullMarked;
