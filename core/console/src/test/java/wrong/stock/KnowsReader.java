package wrong.stock;

public class KnowsReader {
    wrong.device.Reader known;
}
