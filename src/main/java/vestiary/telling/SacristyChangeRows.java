package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class SacristyChangeRows implements ChangeRows<SacristyChangeRow> {}
