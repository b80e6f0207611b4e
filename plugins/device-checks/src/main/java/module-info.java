/** Checks of hazards, power, covers, wear and tests of devices. */
@org.jspecify.annotations.NullMarked
module reseat.devicechecks {
    requires static org.jspecify;
    requires reseat.toolkit;

    provides reseat.spi.Plugin with
            reseat.devicechecks.DeviceChecksPlugin;
}
