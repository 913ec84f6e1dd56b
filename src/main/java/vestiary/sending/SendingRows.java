package vestiary.sending;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

@ApplicationScoped
class SendingRows implements PanacheRepositoryBase<SendingRow, UUID> {}
