package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class MassChangeRows implements ChangeRows<MassChangeRow> {}
