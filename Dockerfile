FROM node:22-bookworm-slim
WORKDIR /app
# The packages first: they change less often than the source.
COPY package.json package-lock.json .npmrc ./
COPY apps/api/package.json apps/api/
COPY apps/web/package.json apps/web/
COPY libs/domain/package.json libs/domain/
COPY libs/journal/package.json libs/journal/
COPY libs/api-client/package.json libs/api-client/
RUN npm ci --ignore-scripts
COPY . .
RUN npm run build && mkdir /data && chown -R node:node /app /data
USER node
VOLUME /data
EXPOSE 4180
CMD ["node", "apps/launcher/start.mjs"]
