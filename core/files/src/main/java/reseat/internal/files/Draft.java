package reseat.internal.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.model.Consumable;
import reseat.model.FunctionTest;
import reseat.model.Hazard;
import reseat.model.Joint;
import reseat.model.Outline;
import reseat.model.Part;
import reseat.model.Prepare;
import reseat.model.ScrewType;
import reseat.model.SetupTable;
import reseat.model.Supply;
import reseat.model.Tool;

/**
 * The facts of a device as far as they could be read; may still be invalid. Filled only by {@link
 * Assembly}.
 */
final class Draft {
    String base = "";
    String hand = "";
    String usualPosture = "";
    Optional<Outline> outline = Optional.empty();
    Optional<SetupTable> setup = Optional.empty();
    final Map<String, Part> parts = new LinkedHashMap<>();
    final Map<String, Joint> joints = new LinkedHashMap<>();
    final Map<String, Supply> supplies = new LinkedHashMap<>();
    final Map<String, Tool> tools = new LinkedHashMap<>();
    final Map<String, ScrewType> screwTypes = new LinkedHashMap<>();
    final Map<String, Consumable> consumables = new LinkedHashMap<>();
    final Map<String, Hazard> hazards = new LinkedHashMap<>();
    final Map<String, Prepare> prepares = new LinkedHashMap<>();
    final Map<String, FunctionTest> tests = new LinkedHashMap<>();
}
