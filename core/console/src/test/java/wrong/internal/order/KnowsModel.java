package wrong.internal.order;

public class KnowsModel {
    wrong.model.Device known;
}
