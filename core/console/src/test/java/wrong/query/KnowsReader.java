package wrong.query;

public class KnowsReader {
    wrong.device.Reader known;
}
