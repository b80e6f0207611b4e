package wrong.order;

public class KnowsModel {
    wrong.model.Device known;
}
