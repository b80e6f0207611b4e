package reseat.oracle;

import reseat.model.Device;

/** Small random devices for other tests. */
public final class SmallDevices {

    private SmallDevices() {}

    public static Device of(long seed) {
        return RandomDevices.of(seed).device();
    }
}
