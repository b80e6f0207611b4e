package wrong.plan;

public class AllRight {
    wrong.model.Device device;
    wrong.text.Words words;
}
