package reseat.files;

import reseat.internal.files.SchemaWriter;

/** The JSON Schema of device files, for completion and validation in editors. */
public final class DeviceSchema {

    private DeviceSchema() {}

    /**
     * Returns the schema, generated from the same description of the format that the reader uses.
     *
     * @return JSON Schema, draft 2020-12, with line feeds; the same text at each call
     */
    public static String json() {
        return SchemaWriter.json();
    }
}
