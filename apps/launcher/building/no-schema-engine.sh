#!/bin/sh
# Stands where Prisma's command line looks for its native engine, so that it downloads none. It must fail:
# with an engine that ends with 0, `prisma migrate deploy` would do nothing and report success.
echo "Prisma's native schema engine is not used here. Use: npm run db:migrate, db:new or db:drift" >&2
exit 1
