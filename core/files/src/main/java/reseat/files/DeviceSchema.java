package reseat.files;

import reseat.internal.files.SchemaWriter;

/** The JSON Schema of device files, for editors that complete and check while one writes. */
public final class DeviceSchema {

    private DeviceSchema() {}

    /**
     * Returns the schema, made from the description of the format that the reader itself reads by.
     *
     * @return JSON Schema, draft 2020-12, with line feeds; the same text at each call
     */
    public static String json() {
        return SchemaWriter.json();
    }
}
