package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.given.Samples;

class DeviceSchemaTest {

    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(DeviceSchema.json());

    @TempDir Path folder;

    private static Set<ValidationMessage> messages(String yaml) {
        return SCHEMA.validate(yaml, InputFormat.YAML);
    }

    @Test
    void isASchemaOfItsDialect() {
        JsonSchema dialect =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(
                                com.networknt.schema.SchemaLocation.of(
                                        "https://json-schema.org/draft/2020-12/schema"));
        assertEquals(Set.of(), dialect.validate(DeviceSchema.json(), InputFormat.JSON));
    }

    @Test
    void acceptsWhatTheReaderAccepts() {
        assertEquals(Set.of(), messages(TinDevice.TIN));
        String resolved =
                ResolvedJson.write(TinDevice.device(TinDevice.tin(folder, "id: tin", "id: tin")));
        assertEquals(Set.of(), SCHEMA.validate(resolved, InputFormat.JSON));
    }

    static List<Path> samples() {
        return Samples.devices();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void acceptsEverySample(Path sample) throws IOException {
        assertEquals(Set.of(), messages(Files.readString(sample)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name: Tin | nmae: Tin",
                "kind: cover | kind: cover, colour: red",
                "base: tray | resolved: true",
                "id: tin | id: t/n",
                "drive: PH0 | patch: true",
                "width: 60 mm | width: 60",
                "form: insert | form: hole",
                "holds: [lid, tray] | holds: [lid]",
                "clamped: 1.2 mm | clamped: 1.2 mm, clampedMm: 1.2",
                "x: 55 | x: here",
                "torque: 0.18 N·m | torqueNm: -1",
            })
    void refusesWhatTheReaderRefuses(String found, String put) {
        assertFalse(messages(TinDevice.TIN.replace(found, put)).isEmpty());
        assertFalse(TinDevice.read(TinDevice.tin(folder, found, put)).device().isPresent());
    }

    @Test
    void anEmptyResolvedFileLacksMore() {
        String empty =
                "{\"format\": \"reseat-device/1\", \"id\": \"x\", \"base\": \"b\", \"parts\": {}, \"joints\": {}";
        assertEquals(0, SCHEMA.validate(empty + "}", InputFormat.JSON).size());
        assertEquals(3, SCHEMA.validate(empty + ", \"resolved\": true}", InputFormat.JSON).size());
    }
}
