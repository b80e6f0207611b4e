package reseat.query;

import java.util.Optional;

/**
 * A tool that a plan uses.
 *
 * @param tool id
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param drive the drive that it turns
 * @param acts how many acts use it
 * @param first stable id of the first act that uses it
 * @param owned whether the shop has it; empty if that is not known
 */
public record ToolRow(
        String tool,
        String pointer,
        String name,
        Optional<String> drive,
        int acts,
        String first,
        Optional<Boolean> owned) {}
