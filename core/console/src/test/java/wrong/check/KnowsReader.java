package wrong.check;

public class KnowsReader {
    wrong.device.Reader known;
}
