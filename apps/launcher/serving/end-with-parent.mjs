// Loaded into the API's process: a launcher that was killed takes the API with it, so that the port comes free.
if (process.channel) {
  process.once('disconnect', () => process.kill(process.pid, 'SIGTERM'));
  process.channel.unref();
}
